import { validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

/**
 * The lone oak of the trade notes, scene S3 (common practice, no published source): trunk r 0.45 to 0.25, h 3; five limbs
 * r 0.2 to 0.08 from z 2.5; a crown of 12 flattened balls r 1.2 to 1.8 between z 4 and 8.5; tree 16 m off; two lamps 7.6 m
 * out at two and at ten o'clock, z 1.5, aimed at z 4, 3 s a side; hill as a dome r 60, h 3.
 */
const distanceMetres = 16;
const outMetres = 7.6;
const domeRadius = (60 ** 2 + 3 ** 2) / (2 * 3);

/** Height of the hill so far from its top, metres; 0 without one. */
const hillAt = (metres: number): number => Math.sqrt(domeRadius ** 2 - metres ** 2) - (domeRadius - 3);

const hillProfile = Array.from({ length: 21 }, (_, k) => 60 - 3 * k).map((r) => [r, Math.max(hillAt(r), 0)]);

const ball = (k: number) => {
  const [turn, radius] = [(2 * Math.PI * k) / 12, 1.2 + (0.6 * (k % 4)) / 3];
  const out = k % 2 === 0 ? 2 : 1;
  const up = 4 + ((8.5 - 4 - 1.4 * radius) * (k % 5)) / 4;
  return {
    kind: 'sphere',
    position: [out * Math.cos(turn), out * Math.sin(turn), up],
    radiusMetres: radius,
    heightMetres: 1.4 * radius,
    sides: 12,
  };
};

const limb = (k: number) => ({
  kind: 'cylinder',
  position: [0, 0, 2.5],
  turnDegrees: 72 * k,
  tiltDegrees: 50,
  radiusMetres: 0.2,
  topRadiusMetres: 0.08,
  heightMetres: 2.5 + 0.3 * k,
  sides: 8,
});

/** When each of the two passes is on, and in which frame; delays before the frames. */
export interface OakFrame {
  readonly seconds: number;
  readonly delaySeconds?: number;
  readonly passes: readonly {
    readonly side: 'right' | 'left';
    readonly on: number;
    readonly off: number;
    /** How far east lamp and aim are moved. */
    readonly asideMetres?: number;
  }[];
}

const passOf = ({ side, on, off, asideMetres = 0 }: OakFrame['passes'][number], isOnHill: boolean) => {
  const turn = side === 'right' ? Math.PI / 3 : -Math.PI / 3;
  const up = 1.5 + (isOnHill ? hillAt(outMetres) : 0);
  const position = [asideMetres + outMetres * Math.sin(turn), distanceMetres + outMetres * Math.cos(turn), up];
  const aim = [asideMetres, distanceMetres, 4 + (isOnHill ? 3 : 0)];
  return { id: side, name: `Rim, ${side}`, lampId: 'torch', on, off, waypoints: [{ position, aim }] };
};

/** The oak with frames of our choice, on its hill or on the level. */
export const loneOak = (frames: readonly OakFrame[], isOnHill = true, walking: object = {}): Setup => {
  const base = isOnHill ? 3 : 0;
  const hill = {
    id: 'hill',
    name: 'Hill',
    position: [0, distanceMetres, 0],
    parts: [{ kind: 'turned', profile: hillProfile, sides: 48 }],
  };
  const oak = {
    id: 'oak',
    name: 'Oak',
    position: [0, distanceMetres, base - 0.1],
    finish: { reflectance: 0.12 },
    parts: [
      { kind: 'cylinder', radiusMetres: 0.45, topRadiusMetres: 0.25, heightMetres: 3, sides: 16 },
      ...Array.from({ length: 5 }, (_, k) => limb(k)),
      ...Array.from({ length: 12 }, (_, k) => ball(k)),
    ],
  };
  return validateSetup({
    format: 'lampfall-setup',
    version: 3,
    id: 'oak',
    name: 'Oak',
    walking,
    subjects: isOnHill ? [hill, oak] : [oak],
    camera: { position: [0, 0, 0.8 + (isOnHill ? hillAt(distanceMetres) : 0)], aim: [0, distanceMetres, base + 3] },
    lamps: [
      {
        kind: 'torch',
        id: 'torch',
        name: 'Torch',
        output: { from: 'lumens', lumens: 40 },
        beam: { shape: 'flood', degrees: 40 },
      },
    ],
    schemes: [
      {
        id: 'rim',
        name: 'Twin rim',
        frames: frames.map(({ passes, ...frame }, f) => ({
          id: `frame-${f + 1}`,
          name: `Frame ${f + 1}`,
          aperture: 7.1,
          iso: 800,
          ...frame,
          passes: passes.map((pass) => passOf(pass, isOnHill)),
        })),
      },
    ],
  });
};
