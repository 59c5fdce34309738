import { create } from 'zustand';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { MarksAnswer, MarksRequest, SchemeMarks } from '../workers/marks-messages.ts';
import { withoutKnownBeams } from '../workers/request-parts.ts';
import { useApp } from './app-store.ts';
import { likeFrame } from './like-frame.ts';
import { schemesOnScreen, useSession } from './session.ts';
import { stageKeyOf } from './stage-key.ts';

export type { PassShadows, SubjectOutline } from '../workers/marks-messages.ts';

/** Marks over the pictures as last worked out, by scheme id. They trail the setup by a few tenths of a second. */
const useMarksStore = create<{ readonly byScheme: Readonly<Record<string, SchemeMarks>> }>(() => ({ byScheme: {} }));

/** The marks over a scheme's picture, if there are any yet. */
export const useMarks = (schemeId: string): SchemeMarks | undefined =>
  useMarksStore((state) => state.byScheme[schemeId]);

/** The frames of a scheme that are on screen: the one like the frame shown, else those of its blend. */
const framesOnScreen = (setup: Setup, scheme: Scheme): string[] => {
  const { schemeId, frameId, showsBlend } = useApp.getState();
  const present = setup.schemes.find(({ id }) => id === schemeId);
  const shown = showsBlend ? undefined : present?.frames.find(({ id }) => id === frameId);
  const like = shown && likeFrame(scheme, shown);
  if (like) return [like.id];
  const { frames } = scheme.blend;
  return frames.length > 0 ? frames.map((each) => each.frameId) : scheme.frames.map(({ id }) => id);
};

/** All that the marks of a scheme hang on; the same values give the same marks. */
const causesOf = (setup: Setup, scheme: Scheme): readonly unknown[] => {
  const { shadows, outline } = useSession.getState().marks;
  const { camera, lamps, measuredBeams } = setup;
  const frames = framesOnScreen(setup, scheme).join();
  return [scheme, stageKeyOf(setup), camera, lamps, measuredBeams, frames, shadows, outline];
};

const areSame = (a: readonly unknown[] | undefined, b: readonly unknown[]) => a?.every((v, i) => v === b[i]) ?? false;

/** Starts the worker that outlines shadows and lit edges; one scheme at a time, always as it is now, only while marks are on. */
export const startMarks = (): void => {
  const worker = new Worker(new URL('../workers/marks.worker.ts', import.meta.url), { type: 'module' });
  let asked = 0;
  let isBusy = false;
  let sentBeams: Setup['measuredBeams'] | null = null;
  let setupId = '';
  const known = new Map<string, readonly unknown[]>();
  const ask = () => {
    const setup = useApp.getState().history.present;
    const { room, marks } = useSession.getState();
    // another document may use the same ids for its schemes
    if (setup.id !== setupId) {
      setupId = setup.id;
      known.clear();
      useMarksStore.setState({ byScheme: {} });
    }
    if (isBusy || room === 'sweep' || !(marks.shadows || marks.outline)) return;
    const onScreen = schemesOnScreen();
    const stale = setup.schemes.find(
      (scheme) => onScreen.includes(scheme.id) && !areSame(known.get(scheme.id), causesOf(setup, scheme)),
    );
    if (!stale) return;
    known.set(stale.id, causesOf(setup, stale));
    isBusy = true;
    const request: MarksRequest = {
      id: ++asked,
      stageKey: stageKeyOf(setup),
      ...withoutKnownBeams(setup, sentBeams),
      schemeIds: [stale.id],
      frameIds: framesOnScreen(setup, stale),
      wants: { shadows: marks.shadows, outline: marks.outline },
    };
    worker.postMessage(request);
    sentBeams = setup.measuredBeams;
  };
  worker.onmessage = ({ data }: MessageEvent<MarksAnswer>) => {
    isBusy = false;
    useMarksStore.setState(({ byScheme }) => ({ byScheme: { ...byScheme, [data.schemeId]: data.marks } }));
    ask();
  };
  // what could not be worked out is not asked again until something changes
  worker.onerror = () => {
    isBusy = false;
    sentBeams = null;
    useMarksStore.setState({ byScheme: {} });
  };
  useApp.subscribe(ask);
  useSession.subscribe(ask);
  ask();
};
