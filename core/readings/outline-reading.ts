import { stopsFromMidGrey } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import type { FaceLight } from './face-light.ts';
import { skyOf } from './frame-sky.ts';
import { percentile } from './percentile.ts';
import { sightOf } from './sight.ts';

/** A subject before the sky, in one frame. Levels are medians, stops from mid-grey; null in the dark. */
export interface OutlineReading {
  readonly subjectId: string;
  /** Share of its outline that stands before the sky, 0 to 1. */
  readonly skyShare: number;
  /** The sky right behind that outline. */
  readonly skyStops: number | null;
  /** What the camera sees of the subject by moon and sky alone, and under all light of the frame. */
  readonly unlitStops: number | null;
  readonly litStops: number | null;
  /** The sky over the subject: what makes a silhouette. */
  readonly skyOverUnlitStops: number | null;
  readonly skyOverLitStops: number | null;
}

/** Most directions that the sky is read in. */
const mostDirections = 64;

const over = (a: number | null, b: number | null): number | null => (a === null || b === null ? null : a - b);

/** Reads a subject's outline against the sky; null where none of it stands before the sky. */
export const outlineReading = (world: World, frame: WorldFrame, subject: number): OutlineReading | null => {
  const { stage, view } = world;
  const found = stage.subjects[subject];
  const sight = sightOf(stage, view);
  const { edge, sky } = sight.silhouette(subject);
  if (!found || sky.length === 0) return null;
  const luminanceAt = skyOf(stage, frame);
  const step = Math.ceil(sky.length / mostDirections);
  const isSky = ({ source }: WorldLight) => source.kind === 'sky' || source.kind === 'seen-sky';
  const { seconds } = frame.lights.find(isSky) as WorldLight;
  const behind = sky.filter((_, i) => i % step === 0).map((toward) => luminanceOfLinearSrgb(luminanceAt(toward)));
  const levelOf = (luminanceSeconds: readonly number[]): number | null => {
    // where an outline stands before the sky there is a face too
    const median = percentile(luminanceSeconds, 0.5);
    return median > 0 ? stopsFromMidGrey(median, frame.exposure) : null;
  };
  const faceUnder = (isMeant: (light: WorldLight) => boolean): number | null => {
    const lights = frame.lights.filter((light) => light.source.kind !== 'seen-sky' && isMeant(light));
    const faces = lights.map((light) => sight.thinFaceLight(subject, light.source));
    return levelOf(
      (faces[0] as FaceLight).map((_, p) =>
        lights.reduce((sum, { strength, seconds: lit }, i) => {
          const { lux, reflectance } = (faces[i] as FaceLight)[p] as FaceLight[number];
          return sum + (lux * reflectance * luminanceOfLinearSrgb(strength) * lit) / Math.PI;
        }, 0),
      ),
    );
  };
  const skyStops = levelOf(behind.map((luminance) => luminance * seconds));
  const unlitStops = faceUnder(({ source }) => source.kind !== 'lamp');
  const litStops = faceUnder(() => true);
  return {
    subjectId: found.id,
    skyShare: sky.length / edge.length,
    skyStops,
    unlitStops,
    litStops,
    skyOverUnlitStops: over(skyStops, unlitStops),
    skyOverLitStops: over(skyStops, litStops),
  };
};
