const lamps = [
  {
    kind: 'torch',
    id: 'torch',
    name: 'Torch',
    output: { from: 'beam-distance', distanceMetres: 30 },
    diameterMm: 60,
    beam: { shape: 'spot', beamDegrees: 30 },
  },
  {
    kind: 'torch',
    id: 'flood',
    name: 'Flood',
    output: { from: 'lumens', lumens: 50 },
    beam: { shape: 'flood', degrees: 70 },
  },
  { kind: 'panel', id: 'panel', name: 'Panel', output: { from: 'lumens', lumens: 200 }, widthMm: 600, heightMm: 400 },
  { kind: 'lantern', id: 'lantern', name: 'Lantern', output: { from: 'lumens', lumens: 80 }, diameterMm: 200 },
  { kind: 'tube', id: 'tube', name: 'Tube', output: { from: 'lumens', lumens: 150 }, lengthMm: 900, diameterMm: 90 },
  { kind: 'point', id: 'point', name: 'Point', output: { from: 'lumens', lumens: 90 } },
  {
    kind: 'torch',
    id: 'lobe',
    name: 'Lobe',
    output: { from: 'peak-candela', candela: 200 },
    beam: { shape: 'lobe', degrees: 50 },
  },
  {
    kind: 'panel',
    id: 'grid',
    name: 'Panel behind a grid',
    output: { from: 'lux-at-1-metre', lux: 150 },
    widthMm: 500,
    heightMm: 500,
    beam: { shape: 'lobe', degrees: 40 },
  },
  {
    kind: 'torch',
    id: 'measured',
    name: 'Measured torch',
    output: { from: 'measured' },
    beam: { shape: 'measured', beamId: 'crooked', turnDegrees: 20 },
  },
  {
    kind: 'point',
    id: 'measured-point',
    name: 'Measured bulb',
    output: { from: 'lumens', lumens: 120 },
    beam: { shape: 'measured', beamId: 'street' },
  },
];
const lampIds = lamps.map(({ id }) => id);

/** Invented: one beam without symmetry that stops short of the full circle, one bilateral with light behind it. */
const measuredBeams = [
  {
    id: 'crooked',
    name: 'Crooked',
    verticalDegrees: [0, 5, 10, 20, 40, 75],
    horizontalDegrees: [0, 80, 190, 300],
    candela: [
      [200, 180, 140, 70, 20, 0],
      [200, 190, 150, 100, 60, 10],
      [200, 150, 90, 20, 4, 0],
      [200, 185, 170, 140, 80, 30],
    ],
  },
  {
    id: 'street',
    name: 'Street',
    verticalDegrees: [0, 30, 60, 90, 180],
    horizontalDegrees: [0, 60, 180],
    candela: [
      [40, 60, 90, 30, 5],
      [40, 50, 30, 20, 5],
      [40, 10, 4, 2, 1],
    ],
  },
];

const pass = (id: string, lampId: string, position: number[], more: object = {}) => ({
  id,
  name: id,
  lampId,
  on: 0,
  off: 4,
  waypoints: [{ position, aim: [0, 8, 0.8] }],
  ...more,
});

const standing = (kind: string, east: number, more: object) => ({
  id: kind,
  name: kind,
  position: [east, 8, 0],
  finish: { reflectance: [0.3, 0.25, 0.2] },
  parts: [{ kind, turnDegrees: 25, ...more }],
});

/** A white room around all of it, 22 x 22 x 6 m; its floor lies under the ground. */
const room = {
  id: 'room',
  name: 'Room',
  position: [0, 6, -0.5],
  finish: { reflectance: 0.8 },
  parts: [{ kind: 'box', widthMetres: 22, depthMetres: 22, heightMetres: 6 }],
};

/** What a test may set about the whole setup and its camera. */
interface Variant {
  readonly bounces?: number;
  readonly drawn?: object;
  /** Put everything into a closed white room, where most of the light has bounced. */
  readonly inRoom?: boolean;
  /** Instead of the usual sensor. */
  readonly sensor?: object;
  readonly iso?: number;
}

/**
 * A frame for every kind of lamp and beam, moving passes, people in sight, gels, cloth, snoots, moonlight, and sixteen passes at once,
 * over every kind of part.
 */
export const everyKindSetup = ({ bounces = 0, drawn = {}, inRoom = false, sensor = {}, iso = 400 }: Variant = {}) => {
  const gel = { name: 'Full CTO', shiftMired: 159, transmission: 0.55 };
  const single = lamps.map(({ id }, i) => ({
    id,
    name: id,
    seconds: 5,
    passes: [pass('only', id, [6 - 1.4 * i, 0.5, 2.2 + 0.1 * i])],
  }));
  const dressed = {
    id: 'dressed',
    name: 'Gels, cloth, snoot',
    seconds: 5,
    passes: [
      pass('gelled', 'torch', [5, 2, 1], {
        gels: [
          gel,
          { name: 'Half plus green', colour: [0.7, 1, 0.7], transmission: 0.9 },
          { name: 'ND', transmission: 0.5 },
        ],
        cloth: { stops: 1, spreadShare: 0.6 },
      }),
      pass('blue', 'panel', [-5, 2, 1.5], {
        gels: [{ name: 'Half CTB', shiftMired: -78, transmission: 0.55 }],
        snootDegrees: 50,
      }),
      pass('snooted', 'lantern', [0, 4, 2.5], { snootDegrees: 70 }),
    ],
  };
  const moving = {
    id: 'moving',
    name: 'Moving',
    seconds: 5,
    passes: [
      pass('walk', 'torch', [0, 0, 0], {
        gels: [gel],
        waypoints: [
          { time: 0, position: [-4, 5, 0.6], aim: [0, 8, 0.8] },
          { time: 4, position: [4, 5, 0.6], aim: [0, 8, 0.8] },
        ],
      }),
    ],
  };
  // people in the picture: one walks through it before a lantern, one stands in it beside a torch
  const inSight = {
    id: 'in-sight',
    name: 'In sight',
    seconds: 5,
    passes: [
      pass('walk', 'lantern', [0, 0, 0], {
        strokes: 2,
        waypoints: [
          { time: 0, position: [-3, 6, 1.2], aim: [-2, 20, 1] },
          { time: 2, position: [3, 6, 1.2], aim: [2, 20, 1] },
        ],
      }),
      pass('stand', 'torch', [2, 5, 1], { off: 3, waypoints: [{ position: [2, 5, 1], aim: [-2, 7, 0.6] }] }),
    ],
  };
  const sixteen = {
    id: 'sixteen',
    name: 'Sixteen',
    seconds: 5,
    passes: Array.from({ length: 16 }, (_, i) => {
      // round the camera's side and above the picture: a bare lamp in it would outshine all else
      const turn = Math.PI * (1.1 + (0.8 * i) / 15);
      const position = [7.9 * Math.cos(turn), 8 + 7.9 * Math.sin(turn), 2.5];
      return pass(`p${i}`, lampIds[i % lampIds.length] ?? '', position, { levelPercent: 20 + i });
    }),
  };
  return {
    format: 'lampfall-setup',
    version: 3,
    id: 'every-kind',
    name: 'Every kind',
    bounces,
    place: { moonlight: { bearingDegrees: 230, altitudeDegrees: 35, illuminanceLux: 0.1 } },
    ground: {
      finish: { reflectance: inRoom ? 0.8 : 0.12 },
      relief: [{ kind: 'stones', count: 60, heightMetres: [0.05, 0.3], centre: [0, 7], radiusMetres: 4 }],
    },
    subjects: [
      ...(inRoom ? [room] : []),
      standing('box', -2.5, { widthMetres: 0.8, depthMetres: 0.5, heightMetres: 1.6, roundMetres: 0.1 }),
      standing('cylinder', -1.2, { radiusMetres: 0.4, topRadiusMetres: 0.2, heightMetres: 1.5, sides: 16 }),
      standing('cone', 0, { radiusMetres: 0.5, heightMetres: 1.4, sides: 16 }),
      standing('sphere', 1.2, { radiusMetres: 0.5, sides: 16 }),
      standing('capsule', 2.4, { radiusMetres: 0.3, heightMetres: 1.7, sides: 16 }),
      standing('plane', 3.6, { widthMetres: 1, depthMetres: 1, tiltDegrees: 70, position: [0, 0, 0.6] }),
    ],
    camera: {
      position: [0, 0, 1.6],
      aim: [0, 8, 0.7],
      focalLengthMm: 28,
      rollDegrees: 4,
      sensor: { widthMm: 32, heightMm: 18, ...sensor },
      drawn,
    },
    lamps,
    measuredBeams,
    schemes: [
      {
        id: 's',
        name: 'S',
        frames: [...single, dressed, moving, inSight, sixteen].map((frame) => ({
          aperture: 1.8,
          focusMetres: 6,
          iso,
          ...frame,
        })),
      },
    ],
  };
};
