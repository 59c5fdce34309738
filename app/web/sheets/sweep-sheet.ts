import type { Frame } from '../../../core/setup/schema/setup.ts';
import { fileStem } from '../ui/file-stem.ts';
import { sharedPlanView } from '../ui/plan-view.ts';
import { settingWords } from './setting-words.ts';
import type { Sheet, SheetCell } from './sheet.ts';

/** The sheet of a sweep in words. */
interface Described {
  readonly title: string;
  readonly groups: readonly {
    readonly name: string;
    readonly cells: readonly { readonly screen: string; readonly name: string; readonly lines: readonly string[] }[];
  }[];
}

interface Swept {
  readonly described: Described;
  readonly pictureOf: (screen: string) => SheetCell['picture'] | null;
  readonly frame: Frame | null;
  readonly samples: number;
}

/** A clock has twelve hours: two rows of six. */
const mostColumns = 6;

/** The sheet of a sweep: every picture with its own small plan, all plans to one scale; null when there is nothing in it. */
export const sweepSheet = ({ described, pictureOf, frame, samples }: Swept): Sheet | null => {
  const groups = described.groups.flatMap(({ name, cells }) => {
    const there = cells.flatMap(({ screen, ...words }) => {
      const picture = pictureOf(screen);
      return picture ? [{ ...words, picture }] : [];
    });
    return there.length > 0 ? [{ name, cells: there }] : [];
  });
  const pictures = groups.flatMap(({ cells }) => cells.map(({ picture }) => picture));
  const [first] = pictures;
  if (!first) return null;
  const { setup } = first;
  const view = sharedPlanView(
    setup,
    pictures.map(({ scheme }) => scheme),
  );
  const planned = groups.map(({ name, cells }) => ({
    name,
    cells: cells.map((cell): SheetCell => {
      const { scheme, setup: own } = cell.picture;
      const { sensor } = scheme.camera ?? own.camera;
      return { ...cell, plan: { setup: own, scheme, view }, aspect: sensor.widthMm / sensor.heightMm };
    }),
  }));
  return {
    fileName: `${fileStem(setup)}-sweep`,
    title: described.title,
    subtitle: `${setup.name} · ${settingWords(setup, first.scheme, frame)}`,
    hasLevelKey: false,
    columns: Math.min(Math.max(...planned.map(({ cells }) => cells.length)), mostColumns),
    groups: planned,
    frame,
    samples,
  };
};
