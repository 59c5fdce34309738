import { midGreyRatioPerLuminanceSecond } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import type { Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { buildWorld, type World, type WorldFrame, type WorldLight } from '../world/world.ts';
import { middleMoment } from './moments.ts';
import { passSubject } from './pass-subject.ts';
import { isNeutral } from './strategy-density.ts';
import { targetReading, targetSurface } from './target-reading.ts';

/** A pass with the frame that it is in, and how bright it should come out. */
export interface WantedPass {
  readonly frame: Frame;
  readonly pass: Pass;
  /** Level now: of its target from mid-grey, or, where that gets no light, of its light alone by `lightStops`. */
  readonly stops: number;
  readonly isOnTarget: boolean;
  /** On the same scale. */
  readonly wantedStops: number;
}

/** Passes set less than this under the key of their subject were meant to be alike, stops: one marking of a count. */
const alikeStops = 1 / 3;

/** A pass without what only dims it, at full level. */
export const atFullLight = (pass: Pass): Pass => ({
  ...pass,
  levelPercent: 100,
  gels: pass.gels.filter((gel) => !isNeutral(gel)),
});

/**
 * How much of a light a frame records, stops on a scale of its own: the dose times what aperture and ISO make of it. For one
 * thing lit from one place it differs from frame to frame as the thing's level does.
 */
const lightStops = ({ exposure }: WorldFrame, { strength, seconds }: WorldLight): number =>
  stopsFromRatio(Math.max(luminanceOfLinearSrgb(strength) * seconds * midGreyRatioPerLuminanceSecond(exposure), 1e-30));

/** Level of a pass in a world, and of what. */
export interface PassLevel {
  readonly stops: number;
  readonly isOnTarget: boolean;
  readonly light: WorldLight;
}

/**
 * The level that a pass brings its target to, from mid-grey; of its light alone where the target gets none of it, as under
 * light from behind.
 */
export const levelOf = (world: World, worldFrame: WorldFrame, passId: string): PassLevel => {
  const light = worldFrame.lights.find(({ id, source }) => id === passId && source.kind === 'lamp') as WorldLight;
  const surface = targetSurface(world.stage, world.view.position, middleMoment(light).aim);
  const stops = surface ? targetReading(world.stage, surface, light, worldFrame).stops : null;
  return { stops: stops ?? lightStops(worldFrame, light), isOnTarget: stops !== null, light };
};

/**
 * The passes of a scheme in running order, with the level that each should have: the brightest on each subject comes to the
 * night level, and those that are set under it stay as far under it, so that key and fill keep their ratio. Light from
 * behind, which its target gets none of, goes with the brightest on its subject; alone it stays as it is.
 */
export const wantedPasses = (setup: Setup, scheme: Scheme): WantedPass[] => {
  const world = buildWorld(setup, scheme);
  const found = scheme.frames.flatMap((frame, f) =>
    [...frame.passes]
      .sort((a, b) => a.on - b.on)
      .map((pass) => {
        const level = levelOf(world, world.frames[f] as WorldFrame, pass.id);
        const { aim } = middleMoment(level.light);
        const subject = passSubject(world, aim, targetSurface(world.stage, world.view.position, aim));
        return { frame, pass, subject, stops: level.stops, isOnTarget: level.isOnTarget };
      }),
  );
  return found.map(({ subject, ...each }) => {
    const levels = found.flatMap((other) => (other.subject === subject && other.isOnTarget ? [other.stops] : []));
    const key = levels.length > 0 ? Math.max(...levels) : null;
    if (key === null) return { ...each, wantedStops: each.stops };
    if (each.isOnTarget && key - each.stops < alikeStops) return { ...each, wantedStops: setup.nightLevelStops };
    return { ...each, wantedStops: each.stops + setup.nightLevelStops - key };
  });
};
