import { validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

/** What grows: pebbles of one size that come to lie ever closer, or a ground always as full, of ever finer pebbles. */
export type Growth = 'finer' | 'closer';

/** Triangles of a pebble, in the mean: one in eight is drawn rounder than the rest. */
const trianglesPerPebble = 27.5;

/**
 * Ground filled with pebbles all over the picture, a ball and a post on it, one low lamp from the side.
 *
 * @param triangles about how many
 */
export const pebbleSetup = (triangles: number, growth: Growth): Setup => {
  const count = Math.round(triangles / trianglesPerPebble);
  // a quarter of the ground is covered by 1,100 of 0.05 to 0.4 m; as much by ten times as many, each a tenth in area
  const scale = growth === 'finer' ? Math.sqrt(1100 / count) : Math.sqrt(0.1);
  const heightMetres = [0.05 * scale, 0.4 * scale];
  return validateSetup({
    format: 'lampfall-setup',
    version: 3,
    id: 'pebbles',
    name: 'Pebbles',
    ground: { relief: [{ kind: 'pebbles', count, heightMetres, centre: [0, 9], radiusMetres: 10, seed: 7 }] },
    subjects: [
      {
        id: 'post',
        name: 'Post',
        position: [0, 8, 0],
        parts: [{ kind: 'cylinder', radiusMetres: 0.2, heightMetres: 2, sides: 32, topRadiusMetres: 0.15 }],
      },
      { id: 'ball', name: 'Ball', position: [-2, 9, 0], parts: [{ kind: 'sphere', radiusMetres: 0.5, sides: 12 }] },
    ],
    camera: { position: [0, 0, 1.5], aim: [0, 8, 0.6], focalLengthMm: 24, sensor: { widthMm: 36, heightMm: 20.25 } },
    lamps: [
      {
        kind: 'torch',
        id: 'torch',
        name: 'Torch',
        output: { from: 'lumens', lumens: 100 },
        beam: { shape: 'spot', beamDegrees: 60 },
      },
    ],
    schemes: [
      {
        id: 's',
        name: 'S',
        frames: [
          {
            id: 'f',
            name: 'F',
            passes: [
              {
                id: 'p',
                name: 'P',
                lampId: 'torch',
                off: 5,
                waypoints: [{ position: [5, 8, 0.5], aim: [0, 8, 0.3] }],
              },
            ],
          },
        ],
      },
    ],
  });
};
