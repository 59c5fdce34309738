import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { type LampFromShot, lampFromShot } from '../../../core/testshot/lamp-from-shot.ts';
import { measuredAgainstPredicted, type ShotComparison } from '../../../core/testshot/measured-against-predicted.ts';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import { predictedSpot } from '../../../core/testshot/predicted-spot.ts';
import { type PixelPatch, spotLevel } from '../../../core/testshot/spot-level.ts';
import { buildWorld } from '../../../core/world/world.ts';

/** Radius of the spots, as a share of each picture’s width. */
export const spotRadius = 0.01;

/** What is asked: the frame as it was shot, and the two spots. */
export interface ShotQuestion {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly frame: Frame;
  readonly lampId: string;
  readonly look: PhotoLook;
  readonly inPicture: PicturePlace;
  readonly patch: PixelPatch;
}

/** What the shot says, or why it says nothing. */
export type ShotAnswer =
  | { readonly compared: ShotComparison; readonly lamp: LampFromShot | { readonly refused: string } }
  | { readonly refused: string };

/** Holds a spot of a photo against the rehearsal, and puts the difference down to a lamp. */
export const judgeShot = ({ setup, scheme, frame, lampId, look, inPicture, patch }: ShotQuestion): ShotAnswer => {
  const world = buildWorld(setup, scheme);
  const worldFrame = world.frames.find(({ id }) => id === frame.id);
  if (!worldFrame) return { refused: 'The frame is no longer there.' };
  const passIds = frame.passes.flatMap((pass) => (pass.lampId === lampId ? [pass.id] : []));
  const predicted = predictedSpot(world, worldFrame, inPicture, spotRadius, passIds);
  const compared = measuredAgainstPredicted(spotLevel(patch), predicted, look);
  return 'refused' in compared ? compared : { compared, lamp: lampFromShot(compared) };
};
