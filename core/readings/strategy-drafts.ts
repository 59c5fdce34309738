import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { documentFromWorld } from '../world/axes.ts';
import { buildWorld, type WorldFrame } from '../world/world.ts';
import { middleMoment } from './moments.ts';
import { litStarFrameOf, paintFrameOf, type Strategy, starFrameOf } from './strategy-frames.ts';
import { levelOf, type WantedPass, wantedPasses } from './strategy-wanted.ts';

/** A pass, how bright it should come out, and which frame of the new scheme it goes into. */
export interface Draft extends WantedPass {
  readonly at: number;
  /** A walked lamp that was put on a stand half-way. */
  readonly wasWalked: boolean;
}

/** Ids that differ, made of those that are wished for. */
const distinct = (wishes: readonly string[]): string[] => {
  const taken = new Set<string>();
  return wishes.map((wish) => {
    const stem = wish.replace(/-\d+$/, '').slice(0, 58);
    let id = wish;
    for (let n = 2; taken.has(id); n++) id = `${stem}-${n}`;
    taken.add(id);
    return id;
  });
};

/** The pass with its lamp on a stand. One that is walked stands where it is half-way. */
const stood = (setup: Setup, scheme: Scheme, { frame, pass }: WantedPass): Pass => {
  if (pass.waypoints.length === 1) return { ...pass, held: 'stand' };
  const world = buildWorld(setup, scheme);
  const worldFrame = world.frames[scheme.frames.indexOf(frame)] as WorldFrame;
  const { position, aim } = middleMoment(levelOf(world, worldFrame, pass.id).light);
  const place = (v: typeof position) => documentFromWorld(v).map((m) => Math.round(m * 1000) / 1000 + 0);
  const waypoints = [{ time: 0, position: place(position), aim: place(aim) }] as Pass['waypoints'];
  return { ...pass, held: 'stand', waypoints, strokes: 1, dwell: 'typed' };
};

/** Frames that light nothing, such as those of the blue hour, or of a focus stack; the star frame is not among them. */
const unlitFrames = ({ frames }: Scheme, star: Frame): Frame[] =>
  frames.filter(({ id, passes }) => passes.length === 0 && id !== star.id);

/**
 * Frames of a strategy, without their passes, and the passes, not yet set, with the frame that each goes into. Frames that
 * light nothing stay, but where all is to be in one.
 */
export const draftsOf = (
  setup: Setup,
  scheme: Scheme,
  strategy: Strategy,
): { readonly frames: readonly Frame[]; readonly passes: readonly Draft[] } => {
  const camera = scheme.camera ?? setup.camera;
  const wanted = wantedPasses(setup, scheme);
  const named = (frames: readonly Frame[]): Frame[] => {
    const ids = distinct(frames.map(({ id }) => id));
    return frames.map((frame, f) => ({ ...frame, id: ids[f] as string }));
  };
  if (strategy === 'separate') {
    const star = starFrameOf(camera, scheme);
    const unlit = unlitFrames(scheme, star);
    // a picture of the blue hour needs no stars
    const hasSky = unlit.length === 0 || scheme.frames.some(({ id }) => id === star.id);
    const sky: Frame = { ...star, id: star.id === 'painted' ? 'sky' : star.id, purpose: 'sky' };
    const first = [...(hasSky ? [sky] : []), ...unlit];
    const painted = wanted.map(
      ({ frame, pass }): Frame => ({
        ...paintFrameOf(scheme, frame),
        name: pass.name,
        id: 'painted',
      }),
    );
    return {
      frames: named([...first, ...painted]),
      passes: wanted.map((each, i) => ({ ...each, at: first.length + i, wasWalked: false })),
    };
  }
  const star = litStarFrameOf(camera, scheme);
  const ids = distinct(wanted.map(({ pass }) => pass.id));
  const passes = wanted.map((each, i): Draft => {
    const pass = strategy === 'standing' ? stood(setup, scheme, each) : each.pass;
    const wasWalked = pass.waypoints.length < each.pass.waypoints.length;
    return { ...each, pass: { ...pass, id: ids[i] as string }, at: 0, wasWalked };
  });
  return { frames: named([star, ...(strategy === 'standing' ? unlitFrames(scheme, star) : [])]), passes };
};
