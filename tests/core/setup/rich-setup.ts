import { goodSetup, type Loose } from './good-setup.ts';

const finish = { reflectance: [0.3, 0.25, 0.2], gloss: 0.1 };
const parts = [
  { kind: 'box', widthMetres: 1, depthMetres: 0.4, heightMetres: 0.6, roundMetres: 0.05, topShare: 0.8 },
  {
    kind: 'box',
    widthMetres: 0.4,
    depthMetres: 0.4,
    heightMetres: 0.4,
    dimples: { count: 2, radiusMetres: 0.1, depthMetres: 0.02 },
  },
  { kind: 'cylinder', radiusMetres: 0.2, topRadiusMetres: 0.1, heightMetres: 2, sides: 7, finish },
  { kind: 'cone', radiusMetres: 0.5, heightMetres: 1, sides: 5, tiltDegrees: 12 },
  { kind: 'sphere', radiusMetres: 0.5, heightMetres: 0.7, sides: 8 },
  { kind: 'capsule', radiusMetres: 0.2, heightMetres: 1.7, sides: 8, rollDegrees: 90 },
  { kind: 'plane', widthMetres: 3, depthMetres: 2, turnDegrees: 30, position: [0, 1, 0.01] },
  { kind: 'sphere', radiusMetres: 0.4, radiusNorthMetres: 0.3, rough: { heightMetres: 0.05, sizeMetres: 0.5 } },
  { kind: 'wedge', widthMetres: 1, depthMetres: 1, heightMetres: 0.5 },
  { kind: 'ring', radiusMetres: 1, tubeRadiusMetres: 0.1, sides: 8 },
  {
    kind: 'turned',
    profile: [
      [0.3, 0],
      [0.4, 0.2],
      [0, 0.5],
    ],
    sides: 8,
  },
  {
    kind: 'prism',
    outline: [
      [0, 0],
      [1, 0],
      [0, 1],
    ],
    holes: [
      [
        [0.2, 0.2],
        [0.4, 0.2],
        [0.2, 0.4],
      ],
    ],
    heightMetres: 0.3,
  },
  {
    kind: 'loft',
    sections: [0, 1].map((northMetres) => ({
      northMetres,
      outline: [
        [0, 0],
        [0.5, 0],
        [0.2, 0.4],
      ],
    })),
  },
  {
    kind: 'wall',
    widthMetres: 4,
    thicknessMetres: 0.4,
    heightMetres: 2.5,
    gableMetres: 1,
    openings: [{ acrossMetres: 0, sillMetres: 0, widthMetres: 0.9, heightMetres: 2, head: 'round' }],
  },
];

const outputs = [
  { from: 'beam-distance', distanceMetres: 120 },
  { from: 'peak-candela', candela: 3000 },
  { from: 'lux-at-1-metre', lux: 900 },
];

const measured = {
  id: 'file',
  name: 'From a file',
  verticalDegrees: [0, 10, 30, 60, 90],
  horizontalDegrees: [0, 90, 180],
  candela: [
    [900, 800, 300, 40, 0],
    [900, 700, 250, 30, 2],
    [900, 600, 200, 20, 0],
  ],
};
/** What hangs in front of a lamp, and who holds it, by turns. */
const dresses = [
  {},
  { cloth: { stops: 1.5, spreadShare: 0.4 } },
  { snootDegrees: 50 },
  { cloth: { stops: 0.5 }, snootDegrees: 90, held: 'stand', off: 10 },
];

/** A good setup with every kind of part, lamp, beam and ambient light, a patch and a lesson: more for mutations to take hold of. */
export const richSetup = (): Loose => {
  const setup = goodSetup();
  const [torch, panel] = setup.lamps;
  setup.subjects[1].parts = parts;
  setup.place = {
    moonlight: { bearingDegrees: 120, altitudeDegrees: 20, illuminanceLux: 0.1 },
    skylight: { illuminanceLux: 0.001 },
    glowDomes: [
      {
        bearingDegrees: 10,
        widthDegrees: 40,
        name: 'a town',
        luminanceAt10DegreesCdM2: 0.001,
        temperatureKelvin: 2700,
      },
    ],
    hazeVisibilityKm: 12,
  };
  setup.lamps = [
    torch,
    panel,
    { ...torch, id: 'flood', output: outputs[0], beam: { shape: 'flood', degrees: 60 } },
    { ...torch, id: 'bare', output: outputs[1], beam: { shape: 'open' }, diameterMm: 50 },
    { kind: 'lantern', id: 'lantern', name: 'Lantern', output: outputs[2], temperatureKelvin: 2700, diameterMm: 90 },
    { kind: 'tube', id: 'tube', name: 'Tube', output: outputs[0], lengthMm: 500 },
    { ...panel, id: 'softbox', lowestLevelPercent: 5, beam: { shape: 'lobe', degrees: 70 } },
    { kind: 'point', id: 'point', name: 'Point', output: outputs[1] },
    {
      ...torch,
      id: 'filed',
      output: { from: 'measured' },
      beam: { shape: 'measured', beamId: 'file', turnDegrees: 30 },
    },
  ];
  setup.measuredBeams = [measured];
  setup.patch = {
    corners: [
      [-1, 5, 0],
      [2, 5, 0],
      [2, 7, 0.1],
      [-1, 7, 0],
    ],
  };
  setup.hazards = [{ id: 'bog', name: 'Bog', position: [6, -3], radiusMetres: 4 }];
  setup.bounces = 1;
  setup.camera.drawn = { focusBlur: true, vignetting: true, noise: true, response: 'plain' };
  const [scheme] = setup.schemes;
  const [sky, land] = scheme.frames;
  land.passes[0].gels.push({ name: 'Red', colour: [1, 0.1, 0.05], transmission: 0.3 });
  Object.assign(land.passes[0], { strokes: 4, dwell: 'even-dose' });
  const [, fill] = land.passes;
  const dressed = (lamp: Loose, i: number) => ({
    ...fill,
    ...dresses[i % dresses.length],
    id: lamp.id,
    lampId: lamp.id,
  });
  setup.schemes.push({
    ...scheme,
    id: 'own-camera',
    camera: { position: [3, 0, 0.4], aim: [0, 8, 1], rollDegrees: 90, focalLengthMm: 50 },
    frames: [sky, { ...land, passes: setup.lamps.map(dressed) }],
  });
  const steps = [
    { title: 'Look', text: 'From the side.', schemeIds: ['side'], predict: { passId: 'key', subjectId: 'post' } },
    { title: 'Compare', text: 'From the side and through a longer lens.', schemeIds: ['side', 'own-camera'] },
  ];
  setup.lesson = { steps };
  setup.card = { lengths: 'feet', paper: 'letter', permission: 'The farm said yes.' };
  setup.lamps[0].correctionStops = -0.8;
  setup.lamps[0].testShots = [{ at: '2026-10-12T22:41:07', stops: -0.8, uncertaintyStops: 0.3 }];
  const run = {
    at: '2026-10-12T22:40',
    frameId: 'land',
    frameName: 'Land',
    passId: 'key',
    passName: 'Key',
    seconds: 4,
  };
  const photo = { name: 'one.jpg', at: '2026-10-12T22:40:30', aperture: 8, seconds: 10, iso: 400, overStops: -0.8 };
  setup.nights = [
    {
      id: 'night',
      startedAt: '2026-10-12T22:40',
      schemeId: 'side',
      schemeName: 'Side',
      note: 'Dew by eleven.',
      runs: [{ ...run, verdict: 'too-bright' }],
      photos: [photo],
    },
  ];
  return setup;
};
