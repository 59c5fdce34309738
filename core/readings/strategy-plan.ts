import { fullEntry } from '../setup/blend-entries.ts';
import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { exactFNumber, exactIso } from '../units/third-stops.ts';
import { buildWorld, type WorldFrame } from '../world/world.ts';
import { type FrameOrder, frameOrders } from './frame-order.ts';
import { draftsOf } from './strategy-drafts.ts';
import type { Strategy } from './strategy-frames.ts';
import { inTurn, ownFrame } from './strategy-layout.ts';
import { type PlannedPass, plannedPass } from './strategy-pass.ts';
import { type SetDraft, setDraft, strokeOf } from './strategy-set-draft.ts';
import { atFullLight } from './strategy-wanted.ts';
import { walksOf } from './timing-reading.ts';

/** Whether one person can do it. */
export interface PlannedWalk {
  /** False where a way is barred, or counts and walks take longer than the frame that they lie in. */
  readonly isPossible: boolean;
  /** No way leads to some pass. */
  readonly isBarred: boolean;
  /** Counts and the walks between them, in one frame; 0 where nobody walks within one. */
  readonly neededSeconds: number;
  /** What that frame has. */
  readonly availableSeconds: number;
  /** The longest wait for a walk between frames; 0 for none. */
  readonly longestWaitSeconds: number;
}

/** A scheme lit by a strategy, and what that gives. */
export interface StrategyPlan {
  readonly strategy: Strategy;
  readonly scheme: Scheme;
  readonly passes: readonly PlannedPass[];
  readonly walk: PlannedWalk;
  /** From the first shutter to the last, delays included. */
  readonly wholeSeconds: number;
  /** Light that the frames of the passes ask for, over what they asked for before: aperture squared over ISO, of the first. */
  readonly doseRatio: number;
}

/** Light that a frame asks for, for the same brightness: N^2 / S. */
const asks = ({ aperture, iso }: Frame): number => exactFNumber(aperture) ** 2 / exactIso(iso);

const filled = (frames: readonly Frame[], passes: readonly { readonly at: number; readonly pass: Pass }[]): Frame[] =>
  frames.map((frame, f) => ({ ...frame, passes: passes.flatMap(({ at, pass }) => (at === f ? [pass] : [])) }));

/** The lightest of all frames counts: no mask is needed, for a painted frame's sky is darker than that of the star frame. */
const schemeOf = (scheme: Scheme, frames: Frame[]): Scheme => ({
  ...scheme,
  frames,
  blend: { mode: 'lighten', frames: frames.length === 1 ? [] : frames.map(({ id }) => fullEntry(id)) },
});

/**
 * What a strategy makes of a scheme: its lamps, places and gels in other frames, with levels, density and counts that bring
 * each pass to the level that it should have (`wantedPasses`). Light adds and is linear, so each is found from one reading
 * at full level. Where that is out of reach the pass is as near as it can be, and the plan says by how much and what would
 * do it. Camera and stage stay, and so do lamps and places, but a walked lamp that is to stand does so half-way.
 */
export const strategyPlan = (setup: Setup, scheme: Scheme, strategy: Strategy): StrategyPlan => {
  const { frames, passes } = draftsOf(setup, scheme, strategy);
  const full = passes.map((each) => ({ ...each, pass: atFullLight(each.pass) }));
  const bare = buildWorld(setup, schemeOf(scheme, filled(frames, full)));
  const handCount = passes.filter(({ pass }) => pass.held === 'hand').length;
  const set = full.map((each, i) => {
    const where = [frames[each.at] as Frame, bare.frames[each.at] as WorldFrame, bare] as const;
    return setDraft(setup, strategy, each, passes[i]?.pass as Pass, where, handCount);
  });

  const unlaid = schemeOf(scheme, filled(frames, set));
  const walkTo = walksOf(setup, unlaid, buildWorld(setup, unlaid));
  const walks = set.map(({ at, pass }) => walkTo(unlaid.frames[at] as Frame, pass));
  const seconds = walks.map((walk) => walk?.seconds ?? 0);
  const held = set.flatMap(({ pass }, i) => (pass.held === 'hand' ? [i] : []));
  const isBarred = held.some((i, n) => n > 0 && walks[i] === null);

  const [laidFrames, laid] = [[...frames], set.map(({ at, pass }) => ({ at, pass }))];
  if (strategy === 'separate')
    set.forEach(({ at, pass, nightSeconds }, i) => {
      const own = ownFrame(frames[at] as Frame, pass, seconds[i] as number, nightSeconds);
      laidFrames[at] = own.frame;
      laid[i] = { at, pass: own.pass };
    });
  else {
    const turns = inTurn(
      held.map((i) => set[i]?.pass as Pass),
      held.map((i) => seconds[i] as number),
      (frames[0] as Frame).seconds,
    );
    held.forEach((i, n) => {
      laid[i] = { at: 0, pass: turns[n] as Pass };
    });
  }
  const made = schemeOf(scheme, filled(laidFrames, laid));
  const world = buildWorld(setup, made);

  const isWithinOne = strategy !== 'separate' && held.length > 0;
  const counts = held.reduce((sum, i) => {
    const stroke = strokeOf(passes[i]?.pass as Pass);
    return sum + (stroke ?? (set[i] as SetDraft).setting.seconds);
  }, 0);
  const walked = seconds.reduce((sum, each) => sum + each, 0);
  const needed = isWithinOne ? counts + walked : 0;
  const available = isWithinOne ? (frames[0] as Frame).seconds : 0;
  const first = set[0];
  return {
    strategy,
    scheme: made,
    passes: set.map((each) =>
      plannedPass(setup, strategy, each, made.frames[each.at] as Frame, world, world.frames[each.at] as WorldFrame),
    ),
    walk: {
      isPossible: !isBarred && needed <= available,
      isBarred,
      neededSeconds: needed,
      availableSeconds: available,
      longestWaitSeconds: isWithinOne ? 0 : Math.max(...seconds, 0),
    },
    wholeSeconds: (frameOrders(made).at(-1) as FrameOrder).endSeconds,
    doseRatio: first ? asks(frames[first.at] as Frame) / asks(first.frame) : 1,
  };
};
