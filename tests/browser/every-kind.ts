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
  { kind: 'tube', id: 'tube', name: 'Tube', output: { from: 'lumens', lumens: 150 }, lengthMm: 900 },
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

/** A frame for every kind of lamp, a moving pass, gels, moonlight, and sixteen passes at once, over every kind of part. */
export const everyKindSetup = () => {
  const gel = { name: 'Full CTO', shiftMired: 159, transmission: 0.55 };
  const single = lamps.map(({ id }, i) => ({
    id,
    name: id,
    seconds: 5,
    passes: [pass('only', id, [6 - 3 * i, 0.5, 2.2 + 0.2 * i])],
  }));
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
  const sixteen = {
    id: 'sixteen',
    name: 'Sixteen',
    seconds: 5,
    passes: Array.from({ length: 16 }, (_, i) => {
      // round the camera's side and above the picture: a bare lamp in it would outshine all else
      const turn = Math.PI * (1.1 + (0.8 * i) / 15);
      const position = [7.9 * Math.cos(turn), 8 + 7.9 * Math.sin(turn), 2.5];
      return pass(`p${i}`, lamps[i % 5]?.id ?? '', position, { levelPercent: 20 + i });
    }),
  };
  return {
    format: 'lampfall-setup',
    version: 1,
    id: 'every-kind',
    name: 'Every kind',
    place: { moonlight: { bearingDegrees: 230, altitudeDegrees: 35, illuminanceLux: 0.1 } },
    ground: { relief: [{ kind: 'stones', count: 60, heightMetres: [0.05, 0.3], centre: [0, 7], radiusMetres: 4 }] },
    subjects: [
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
      sensor: { widthMm: 32, heightMm: 18 },
    },
    lamps,
    schemes: [{ id: 's', name: 'S', frames: [...single, moving, sixteen] }],
  };
};
