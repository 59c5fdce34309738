import { angleInPhoto } from '../../../core/camera/angle-in-photo.ts';
import { evenShareOfSpill } from '../../../core/photometry/beam.ts';
import { edgeTapShare } from '../../../core/photometry/beam-from-taps.ts';
import type { PicturePlace } from '../../../core/readings/patch-corners.ts';
import { spotLevel } from '../../../core/testshot/spot-level.ts';
import { type SpotsRatio, spotsRatio } from '../../../core/testshot/spots-ratio.ts';
import { cutSpot } from '../photo/decode-photo.ts';
import type { TapLens } from './tap-lens.ts';

/** What is tapped, in this order. */
export const tapSteps = ['centre', 'half', 'edge'] as const;

/** Where in the photo was tapped so far. */
export type TapPlaces = Partial<Record<(typeof tapSteps)[number], PicturePlace>>;

/** Radius of what is looked at where one taps, as a share of the photo’s width. */
export const tapRadius = 0.008;

/** What the taps in a photo say, the lamp’s angles off its axis. */
export interface PhotoTaps {
  readonly halfRadians: number;
  readonly edgeRadians: number | null;
  readonly edgeToCentre: number | null;
  /** How far that is known, either way; null = there is none. */
  readonly edgeDoubtStops: number | null;
}

const between = (a: PicturePlace, b: PicturePlace, share: number): PicturePlace => [
  a[0] + (b[0] - a[0]) * share,
  a[1] + (b[1] - a[1]) * share,
];

/** How bright a place of the photo is against the bright centre. */
export const overCentre = (picture: ImageBitmap, place: PicturePlace, centre: PicturePlace): SpotsRatio | null =>
  spotsRatio(spotLevel(cutSpot(picture, place, tapRadius)), spotLevel(cutSpot(picture, centre, tapRadius)));

/** What taps say by a lens; null before centre and half are tapped, and while the lens is in doubt. */
export const photoTaps = (picture: ImageBitmap, { centre, half, edge }: TapPlaces, by: TapLens): PhotoTaps | null => {
  if (!centre || !half || by.isDoubtful) return null;
  const even = edge && overCentre(picture, between(centre, edge, evenShareOfSpill * edgeTapShare), centre);
  return {
    halfRadians: angleInPhoto(centre, half, by.lens),
    edgeRadians: edge ? angleInPhoto(centre, edge, by.lens) : null,
    edgeToCentre: even?.ratio ?? null,
    edgeDoubtStops: even?.uncertaintyStops ?? null,
  };
};
