import type { Vec3 } from '../geometry/vec.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { allLightStops } from './all-light.ts';
import { bestDose, type FaceDoses, type KeyToFill, keyToFill, type PassDose } from './key-to-fill.ts';
import { patchContrast } from './patch-reading.ts';
import { sightOf } from './sight.ts';

/** What the lights of a frame do together. */
export interface FrameReading extends KeyToFill {
  /** Level of all light together where the key is aimed, stops from mid-grey; null in the dark and without a pass. */
  readonly targetStops: number | null;
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
  world: World,
  frame: WorldFrame,
  passes: readonly PassDose[],
  corners: readonly Vec3[] | null,
): FrameReading => {
  const { stage, view } = world;
  const { lights } = frame;
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
  const ratio = keyToFill(passes, doses);
  const keyId = ratio.keyPassId ?? passes[0]?.passId;
  return {
    ...ratio,
    targetStops: keyId === undefined ? null : allLightStops(world, frame, keyId),
    patch: contrast === null ? null : { rmsContrast: contrast },
  };
};
