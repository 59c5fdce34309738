import { finishNamed } from '../setup/finish-presets.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { type Ring, ringCore, ringCourses } from './shared/ring-wall.ts';
import { beam, rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';

interface Frame {
  readonly half: number;
  readonly wall: number;
  readonly eaves: number;
  readonly top: number;
  readonly reach: number;
}

const roofParts = ({ half, eaves, top, reach }: Frame): PartDraft[] => {
  const thick = 0.04;
  const slope = Math.hypot(reach, top - eaves);
  // the upper corner of each half is the ridge
  const lean = (Math.atan2(reach, top - eaves) * 180) / Math.PI;
  const sink = thick * (reach / slope);
  return [
    ...[-1, 1].map(
      (side): PartDraft => ({
        kind: 'box',
        name: 'Roof',
        position: [0, side * reach - (side * (thick / 2) * (top - eaves)) / slope, eaves - sink / 2],
        tiltDegrees: -side * lean,
        widthMetres: 2 * half + 0.5,
        depthMetres: thick,
        heightMetres: slope,
      }),
    ),
    ...[-1, 1].flatMap((side) =>
      [-1, 1].map((north) => {
        // under the middle of a slope, square to it, so that it touches the boards
        const under = thick + 0.033;
        const at = (share: number): [number, number, number] => [
          side * half,
          north * (reach * (1 - share) - (under * (top - eaves)) / slope),
          eaves + (top - eaves) * share - (under * reach) / slope,
        ];
        return beam('Rafter', at(0.15), at(0.97), [0.07, 0.07]);
      }),
    ),
  ];
};

const windlass = ({ half, wall, eaves }: Frame): PartDraft[] => {
  const up = wall + (eaves - wall) * 0.5;
  const bucketUp = wall + 0.02;
  const wood: FinishDraft = finishNamed('dark-timber');
  const crank = half + 0.22;
  return [
    rod('Roller', [-half, 0, up], [half, 0, up], [0.07, 0.07], { sides: 16 }),
    rod('Crank', [half, 0, up], [crank, 0, up], [0.015, 0.015], { sides: 8 }),
    rod('Crank arm', [crank, 0, up + 0.01], [crank, -0.2, up - 0.16], [0.015, 0.015], { sides: 8 }),
    rod('Handle', [crank - 0.01, -0.2, up - 0.16], [crank + 0.16, -0.2, up - 0.16], [0.018, 0.018], { sides: 10 }),
    rod('Rope on the roller', [-0.12, 0, up], [0.12, 0, up], [0.085, 0.085], { sides: 16 }),
    rod('Rope', [0, -0.075, bucketUp + 0.36], [0, -0.075, up], [0.01, 0.01], { sides: 8 }),
    {
      kind: 'turned',
      name: 'Bucket',
      position: [0, -0.075, bucketUp],
      closed: false,
      profile: [
        [0, 0],
        [0.1, 0],
        [0.13, 0.26],
        [0.118, 0.26],
        [0.09, 0.02],
        [0, 0.02],
      ],
      sides: 20,
      finish: wood,
    },
    ...[-1, 1].map((side) =>
      rod('Bail', [side * 0.122, -0.075, bucketUp + 0.25], [0, -0.075, bucketUp + 0.37], [0.006, 0.006], { sides: 6 }),
    ),
  ];
};

export const well: Kit = {
  name: 'well',
  label: 'Well',
  says: 'A round stone well with water in it, and a small roof over its windlass.',
  fields: [
    { key: 'diameterMetres', label: 'Width across', unit: 'm', min: 1, max: 4, initial: 1.5, step: 0.1 },
    { key: 'wallMetres', label: 'Height of the wall', unit: 'm', min: 0.4, max: 1.4, initial: 0.8, step: 0.05 },
    { key: 'thickMetres', label: 'Thickness of the wall', unit: 'm', min: 0.2, max: 0.35, initial: 0.28, step: 0.01 },
    { key: 'roof', label: 'Roof', unit: '', min: 0, max: 1, initial: 1, step: 1, choices: ['None', 'Two slopes'] },
    { key: 'topMetres', label: 'Height of the roof', unit: 'm', min: 2.2, max: 4, initial: 2.6, step: 0.1 },
  ],
  make: ({ diameterMetres = 1.5, wallMetres = 0.8, thickMetres = 0.28, roof, topMetres = 2.6 }, random) => {
    const ring: Ring = { outer: diameterMetres / 2, inner: diameterMetres / 2 - thickMetres };
    const half = ring.outer - thickMetres / 2;
    const eaves = topMetres - (topMetres - wallMetres) * 0.3;
    const frame: Frame = { half, wall: wallMetres, eaves, top: topMetres, reach: Math.max(ring.outer * 0.85, 0.5) };
    const posts = [-1, 1].map(
      (side): PartDraft => ({
        kind: 'box',
        name: 'Post',
        position: [side * half, 0, wallMetres - 0.05],
        widthMetres: 0.12,
        depthMetres: 0.12,
        heightMetres: topMetres - 0.12 - wallMetres + 0.05,
      }),
    );
    const wood = finishNamed('weathered-timber');
    const timber = roof === 1 ? [...posts, ...windlass(frame), ...roofParts(frame)] : [];
    const water: PartDraft = {
      kind: 'cylinder',
      name: 'Water',
      radiusMetres: ring.inner + 0.03,
      heightMetres: Math.min(0.3, wallMetres * 0.4),
      sides: 40,
      finish: finishNamed('water'),
    };
    return {
      finish: finishNamed('granite'),
      parts: tidyParts([
        ...ringCourses(ring, wallMetres, random),
        ringCore(ring, wallMetres),
        water,
        ...timber.map((part) => ({ finish: wood, ...part })),
      ]),
    };
  },
};
