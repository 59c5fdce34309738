import type { Vec3 } from '../geometry/vec.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { bestDose, type FaceDoses, type KeyToFill, keyToFill, type PassDose } from './key-to-fill.ts';
import { patchContrast } from './patch-reading.ts';
import { sightOf } from './sight.ts';

/** What the lights of a frame do together. */
export interface FrameReading extends KeyToFill {
  /** The drawn patch under all lights of the frame; null without one, where it is not seen, and in the dark. */
  readonly patch: { readonly rmsContrast: number } | null;
}

/**
 * Reads a frame.
 *
 * @param passes the frame's passes, read already
 * @param corners of the drawn patch in order round it, world metres; null without one
 */
export const frameReading = (
  { stage, view }: World,
  { lights }: WorldFrame,
  passes: readonly PassDose[],
  corners: readonly Vec3[] | null,
): FrameReading => {
  const sight = sightOf(stage, view);
  const doseOn = (subjectId: string, isMeant: (light: WorldLight) => boolean): number | null => {
    const subject = stage.subjects.findIndex(({ id }) => id === subjectId);
    return bestDose(lights.filter(isMeant).map((light) => [light, sight.faceLight(subject, light.source)] as const));
  };
  const doses: FaceDoses = {
    ofPass: (passId, subjectId) => doseOn(subjectId, ({ id, source }) => source.kind === 'lamp' && id === passId),
    ofAmbient: (subjectId) => doseOn(subjectId, ({ source }) => source.kind !== 'lamp'),
  };
  const contrast =
    corners &&
    patchContrast(
      sight.patch(corners),
      lights.map((light) => [light, sight.patchLight(corners, light.source).lux] as const),
    );
  return { ...keyToFill(passes, doses), patch: contrast === null ? null : { rmsContrast: contrast } };
};
