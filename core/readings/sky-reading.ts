import { apply } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { bodyFromWay } from '../sky/frames-body.ts';
import { surfaceMagnitudeFromLuminance } from '../sky/magnitudes.ts';
import { moonLight } from '../sky/moon-light.ts';
import { skyAt } from '../sky/sky-at.ts';
import { type TwilightName, twilightName } from '../sky/twilight-name.ts';
import { seenAlong } from '../trace/sky-picture.ts';
import { degreesFromRadians } from '../units/angle.ts';
import type { World } from '../world/world.ts';
import { type CoreRegion, coreRegion } from './core-region.ts';
import { seenSkyOf } from './frame-sky.ts';
import { type Hider, hiderOf } from './hider.ts';

/** Where a body of the sky really stands, without refraction; true bearing. Degrees. */
export interface BodyReading {
  readonly altitudeDegrees: number;
  readonly bearingDegrees: number;
}

/** The sky of the hour: where things stand as the shutter opens, and how bright it is over the exposure. Names are those of `lampfall readings --json`. */
export interface SkyReading {
  readonly sun: BodyReading & { readonly light: TwilightName };
  /** What it does as a light is in `MoonReading`. */
  readonly moon: BodyReading & { readonly isUp: boolean; readonly litShare: number };
  /** Brightness straight up with moon, twilight and towns, mag/arcsec2, stars spread evenly. */
  readonly zenithMagnitude: number;
  /** The centre of the Milky Way, and the ten degrees round it as the picture shows them. */
  readonly core: BodyReading & {
    readonly isInFrame: boolean;
    readonly inPictureShare: number;
    readonly hiddenShare: number | null;
    /** What hides most of it; null where nothing does. */
    readonly hiddenBy: Hider | null;
  };
}

/** What cautions look at beside the reading. */
export interface SkyLook {
  readonly reading: SkyReading;
  readonly region: CoreRegion;
}

const degreesOf = (body: { readonly altitudeRadians: number; readonly bearingRadians: number }): BodyReading => ({
  altitudeDegrees: degreesFromRadians(body.altitudeRadians),
  bearingDegrees: degreesFromRadians(body.bearingRadians),
});

const look = (world: World): SkyLook | null => {
  const seen = world.frames[0] && seenSkyOf(world.frames[0]);
  if (!seen) return null;
  const state = skyAt(seen.input);
  const region = coreRegion(world, state);
  const { hiddenBy } = region;
  const core = bodyFromWay(apply(state.worldFromGalactic, [1, 0, 0]), seen.input.northRadians);
  return {
    region,
    reading: {
      sun: { ...degreesOf(state.sun), light: twilightName(state.sun.altitudeRadians) },
      moon: { ...degreesOf(state.moon), isUp: moonLight(state) !== null, litShare: state.moon.litShare },
      zenithMagnitude: surfaceMagnitudeFromLuminance(luminanceOfLinearSrgb(seenAlong(seen, [0, 1, 0]))),
      core: {
        ...degreesOf(core),
        isInFrame: region.isCentreSeen,
        inPictureShare: region.inPictureShare,
        hiddenShare: region.hiddenShare,
        hiddenBy: hiddenBy === null ? null : hiderOf(world.stage, hiddenBy),
      },
    },
  };
};

const known = new WeakMap<World, SkyLook | null>();

/** The sky of the hour over a world and in its picture; null where it is plain. Worked out once. */
export const skyLook = (world: World): SkyLook | null => {
  const before = known.get(world);
  if (before !== undefined) return before;
  const made = look(world);
  known.set(world, made);
  return made;
};

/** Reads the sky of the hour; null where it is plain. */
export const skyReading = (world: World): SkyReading | null => skyLook(world)?.reading ?? null;
