import { create } from 'zustand';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { MarksAnswer, MarksRequest, SchemeMarks } from '../workers/marks-messages.ts';
import { withoutKnownFiles } from '../workers/request-parts.ts';
import { useApp } from './app-store.ts';
import { askedWorker } from './asked-worker.ts';
import { documentKeyOf } from './document-key.ts';
import { frameIdsShown } from './frames-shown.ts';
import { schemesOnScreen } from './schemes-on-screen.ts';
import { useSession } from './session.ts';
import { stageKeyOf } from './stage-key.ts';

export type { BlurLines, PassShadows, SubjectOutline } from '../workers/marks-messages.ts';

/** Marks over the pictures as last worked out, by scheme id. They trail the setup by a few tenths of a second. */
export const useMarksStore = create<{
  readonly byScheme: Readonly<Record<string, SchemeMarks>>;
  readonly failed: boolean;
}>(() => ({
  byScheme: {},
  failed: false,
}));

/** The marks over a scheme's picture, if there are any yet. */
export const useMarks = (schemeId: string): SchemeMarks | undefined =>
  useMarksStore((state) => state.byScheme[schemeId]);

/** The frames of a scheme that are on screen. */
const framesOnScreen = (setup: Setup, scheme: Scheme): string[] => {
  const { schemeId, frameId, showsBlend } = useApp.getState();
  const present = setup.schemes.find(({ id }) => id === schemeId);
  const shown = showsBlend ? undefined : present?.frames.find(({ id }) => id === frameId);
  return frameIdsShown(scheme, shown ?? null);
};

/** All that the marks of a scheme hang on; the same values give the same marks. */
const causesOf = (setup: Setup, scheme: Scheme): readonly unknown[] => {
  const { shadows, outline, sharpness } = useSession.getState().marks;
  const { camera, lamps, measuredBeams } = setup;
  const frames = framesOnScreen(setup, scheme).join();
  return [scheme, stageKeyOf(setup), camera, lamps, measuredBeams, frames, shadows, outline, sharpness];
};

const areSame = (a: readonly unknown[] | undefined, b: readonly unknown[]) => a?.every((v, i) => v === b[i]) ?? false;

let retry = (): void => undefined;

/** Asks once more for marks that could not be worked out. */
export const retryMarks = (): void => retry();

/** Starts the worker that outlines shadows and lit edges, and draws lines of equal blur; one scheme at a time, always as it is now, only while marks are on. */
export const startMarks = (): void => {
  const worker = askedWorker<MarksAnswer>(
    () => new Worker(new URL('../workers/marks.worker.ts', import.meta.url), { type: 'module' }),
  );
  let sent: Setup | null = null;
  let documentKey = '';
  const known = new Map<string, readonly unknown[]>();
  /** Schemes whose marks could not be worked out: not asked for again until something happens on the page. */
  const failed = new Set<string>();
  const fail = (schemeId: string, ofDocument: string) => {
    if (ofDocument === documentKey) {
      failed.add(schemeId);
      known.delete(schemeId);
      useMarksStore.setState(({ byScheme: { [schemeId]: _, ...byScheme } }) => ({ byScheme, failed: true }));
    }
    ask();
  };
  const ask = () => {
    const state = useApp.getState();
    const setup = state.history.present;
    const { room, marks } = useSession.getState();
    // another document may use the same ids for its schemes
    if (documentKeyOf(state) !== documentKey) {
      documentKey = documentKeyOf(state);
      known.clear();
      useMarksStore.setState({ byScheme: {}, failed: false });
    }
    if (worker.isBusy || room === 'sweep' || !(marks.shadows || marks.outline || marks.sharpness)) return;
    const onScreen = schemesOnScreen();
    const stale = setup.schemes.find(
      (scheme) =>
        onScreen.includes(scheme.id) &&
        !failed.has(scheme.id) &&
        !areSame(known.get(scheme.id), causesOf(setup, scheme)),
    );
    if (!stale) return;
    known.set(stale.id, causesOf(setup, stale));
    const ofDocument = documentKey;
    const asked = {
      schemeIds: [stale.id],
      frameIds: framesOnScreen(setup, stale),
      wants: { shadows: marks.shadows, outline: marks.outline, sharpness: marks.sharpness },
    };
    worker.ask({
      request: (id, isNew): MarksRequest => {
        const files = withoutKnownFiles(setup, isNew ? null : sent);
        sent = setup;
        return { id, stageKey: stageKeyOf(setup), ...files, ...asked };
      },
      onAnswer: ({ schemeId, marks: drawn }) => {
        if (ofDocument === documentKeyOf(useApp.getState()))
          useMarksStore.setState(({ byScheme }) => ({
            byScheme: { ...byScheme, [schemeId]: drawn },
            failed: failed.size > 0,
          }));
        ask();
      },
      onFail: () => fail(stale.id, ofDocument),
    });
  };
  const onChange = () => {
    failed.clear();
    ask();
  };
  retry = () => {
    useMarksStore.setState({ failed: false });
    onChange();
  };
  useApp.subscribe(onChange);
  useSession.subscribe(onChange);
  worker.start();
  ask();
};
