import '../../../app/web/own-scripts.ts';
import { useApp } from '../../../app/web/state/app-store.ts';
import { movePass, setPassLevel } from '../../../app/web/state/edits/pass-edits.ts';
import { renameSetup } from '../../../app/web/state/edits/setup-edits.ts';
import type { PassPlace } from '../../../app/web/state/edits/within.ts';
import { openAsOwn } from '../../../app/web/state/open-as-own.ts';
import { useSaving } from '../../../app/web/state/page-saving.ts';
import { samples } from '../../../app/web/state/samples.ts';
import { startSaving } from '../../../app/web/state/start-saving.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

/** What a test sees and does here: the page's store and the page's keeping of it, without its rooms. */
export interface Keeping {
  /** The last edit that is there, as "edit 7"; the setup's name where there is none. Throws where an edit before it is not. */
  readonly shown: () => string;
  readonly news: () => number;
  /** By turns the setup is renamed (with the lamp put where it was and as bright), its lamp moved, and dimmed; every ten edits are one drag. */
  readonly edit: (edit: number) => void;
  /** Takes up a large setup as the user's own. */
  readonly openLarge: () => Promise<void>;
}

declare global {
  interface Window {
    keeping?: Keeping;
  }
}

const app = () => useApp.getState();

const passPlace = ({ schemes }: Setup): PassPlace => {
  for (const { id: schemeId, frames } of schemes)
    for (const { id: frameId, passes } of frames) if (passes[0]) return { schemeId, frameId, passId: passes[0].id };
  throw new Error('no pass');
};

/** Numbers of the last edits of each sort, as the setup has them. */
const lastOfEach = (setup: Setup) => {
  const pass = setup.schemes.flatMap(({ frames }) => frames).flatMap(({ passes }) => passes)[0];
  return {
    renamed: Number(/^edit (\d+)$/.exec(setup.name)?.[1] ?? 0),
    moved: Math.round(((pass?.waypoints[0]?.position[0] ?? 0) - 30) * 1000),
    dimmed: Math.round(((pass?.levelPercent ?? 0) - 10) * 1000),
  };
};
const move = (setup: Setup, edit: number) => movePass(setup, passPlace(setup), [30 + edit / 1000, 30, 1]);
const dim = (setup: Setup, edit: number) => setPassLevel(setup, passPlace(setup), 10 + edit / 1000);

await startSaving();
window.keeping = {
  shown: () => {
    const { present } = app().history;
    const { renamed: base, moved, dimmed } = lastOfEach(present);
    if (base === 0) return present.name;
    const edit = Math.max(base, moved, dimmed);
    const isWhole = moved === Math.min(base + 1, edit) && dimmed === (edit === base + 2 ? edit : base);
    if (!isWhole) throw new Error(`torn: named by edit ${base}, moved by ${moved}, dimmed by ${dimmed}`);
    return `edit ${edit}`;
  },
  news: () => useSaving.getState().news.length,
  edit: (edit) => {
    if (edit % 10 === 0) app().begin();
    app().edit((setup) => {
      if (edit % 3 === 2) return move(setup, edit);
      if (edit % 3 === 0) return dim(setup, edit);
      return dim(move(renameSetup(setup, `edit ${edit}`), edit), edit);
    });
    if (edit % 10 === 9) app().commit();
  },
  openLarge: async () => {
    const setup = await samples.find(({ id }) => id === 'turf-hut')?.load();
    if (setup) openAsOwn(setup);
  },
};
