import { encodeScan } from '../../core/scan/scan-code.ts';

/** A four-sided pyramid, each side in a colour of its own, one of them brighter than any finish can be. */
const pyramid = encodeScan({
  positions: Float64Array.from([-0.6, 0, -0.6, 0.6, 0, -0.6, 0.6, 0, 0.6, -0.6, 0, 0.6, 0, 1.2, 0]),
  indices: Uint32Array.from([1, 0, 4, 2, 1, 4, 3, 2, 4, 0, 3, 4]),
  colours: Uint8Array.from([255, 40, 40, 40, 255, 60, 255, 255, 255, 30, 60, 255]),
});

const lamps = [
  {
    kind: 'torch',
    id: 'torch',
    name: 'Torch',
    output: { from: 'beam-distance', distanceMetres: 40 },
    diameterMm: 60,
    beam: { shape: 'spot', beamDegrees: 40 },
  },
  { kind: 'panel', id: 'panel', name: 'Panel', output: { from: 'lumens', lumens: 200 }, widthMm: 900, heightMm: 600 },
  { kind: 'lantern', id: 'lantern', name: 'Lantern', output: { from: 'lumens', lumens: 80 }, diameterMm: 200 },
  { kind: 'tube', id: 'tube', name: 'Tube', output: { from: 'lumens', lumens: 150 }, lengthMm: 900, diameterMm: 90 },
  { kind: 'point', id: 'point', name: 'Point', output: { from: 'lumens', lumens: 90 } },
];

const pass = (id: string, lampId: string, position: number[], aim: number[] = [0, 7, 0.5]) => ({
  id,
  name: id,
  lampId,
  on: 0,
  off: 4,
  waypoints: [{ position, aim }],
});

const standing = (kind: string, east: number, north: number, finish: object, more: object) => ({
  id: `${kind}-${Math.round(10 * east)}`.replace(/[^a-z0-9-]/g, ''),
  name: kind,
  position: [east, north, 0],
  finish,
  parts: [{ kind, turnDegrees: 25, ...more }],
});

/** A white room around all of it; its floor lies under the ground. */
const room = {
  id: 'room',
  name: 'Room',
  position: [0, 5, -0.5],
  finish: { reflectance: 0.8 },
  parts: [{ kind: 'box', widthMetres: 16, depthMetres: 16, heightMetres: 5 }],
};

/** What a test may set about the whole setup. */
interface Variant {
  readonly bounces?: number;
  readonly drawn?: object;
  /** Put everything into a closed white room, where most of the light has bounced. */
  readonly inRoom?: boolean;
}

/**
 * Wet ground, a pool, a polished ball, paint, metal dull and bright, a coloured scan, a sheet of cloth, a tent with a lantern in
 * it, glossy cloth; a frame for every kind of lamp, one from behind, one without lamps.
 */
export const everyFinishSetup = ({ bounces = 0, drawn = {}, inRoom = false }: Variant = {}) => ({
  format: 'lampfall-setup',
  version: 3,
  id: 'every-finish',
  name: 'Every finish',
  bounces,
  place: { moonlight: { bearingDegrees: 250, altitudeDegrees: 30, illuminanceLux: 0.2 } },
  ground: {
    finish: { reflectance: [0.2, 0.17, 0.12], gloss: 0.6, refractiveIndex: 1.33 },
    relief: [{ kind: 'stones', count: 40, heightMetres: [0.05, 0.3], centre: [0, 9], radiusMetres: 4 }],
  },
  subjects: [
    ...(inRoom ? [room] : []),
    standing('scan', -1.4, 4.6, { reflectance: 0.6, gloss: 0.5 }, { scanId: 'pyramid' }),
    standing(
      'plane',
      0,
      5,
      { reflectance: 0.02, gloss: 1, refractiveIndex: 1.333 },
      { widthMetres: 4, depthMetres: 3, position: [0, 0, 0.02] },
    ),
    standing(
      'box',
      -3,
      8,
      { reflectance: [0.5, 0.2, 0.1], gloss: 0.85 },
      { widthMetres: 0.8, depthMetres: 0.5, heightMetres: 1.6 },
    ),
    standing(
      'sphere',
      -1.6,
      8,
      { reflectance: [0.9, 0.6, 0.4], metal: true, gloss: 1 },
      { radiusMetres: 0.6, sides: 32 },
    ),
    standing(
      'cylinder',
      -0.2,
      8,
      { reflectance: [0.7, 0.7, 0.6], metal: true, gloss: 0.6 },
      { radiusMetres: 0.4, heightMetres: 1.5, sides: 32 },
    ),
    standing('capsule', 1, 8.5, { reflectance: 0.8 }, { radiusMetres: 0.3, heightMetres: 1.7, sides: 16 }),
    standing(
      'cone',
      2.6,
      8,
      { reflectance: [0.5, 0.4, 0.2], transmittance: 0.3 },
      { radiusMetres: 0.9, heightMetres: 1.6, sides: 24 },
    ),
    standing(
      'plane',
      4,
      8,
      { reflectance: 0.3, transmittance: 0.5, gloss: 0.7 },
      { widthMetres: 1.2, depthMetres: 1.2, tiltDegrees: 80, position: [0, 0, 0.7] },
    ),
    standing(
      'sphere',
      0.6,
      6.6,
      { reflectance: 0.1, gloss: 0.75, refractiveIndex: 1.9 },
      { radiusMetres: 0.3, sides: 24 },
    ),
  ],
  scans: [{ id: 'pyramid', name: 'Pyramid', fileName: 'pyramid.ply', ...pyramid }],
  camera: {
    position: [0, 0, 1.6],
    aim: [0, 8, 0.6],
    focalLengthMm: 28,
    rollDegrees: 3,
    sensor: { widthMm: 32, heightMm: 18 },
    drawn,
  },
  lamps,
  schemes: [
    {
      id: 's',
      name: 'S',
      frames: [
        { id: 'torch', passes: [pass('only', 'torch', [5, 1, 2])] },
        { id: 'panel', passes: [pass('only', 'panel', [-4, 5, 1.8])] },
        { id: 'lantern', passes: [pass('only', 'lantern', [0.4, 7.6, 1.9])] },
        { id: 'tube', passes: [pass('only', 'tube', [3, 3.5, 1.2])] },
        { id: 'point', passes: [pass('only', 'point', [-2.5, 2, 2.5])] },
        { id: 'tent', passes: [pass('only', 'lantern', [2.6, 8, 0.6])] },
        { id: 'behind', passes: [pass('only', 'torch', [3, 13, 1.5])] },
        { id: 'night', passes: [] },
      ].map((frame) => ({ name: frame.id, seconds: 5, aperture: 1.8, focusMetres: 6, iso: 400, ...frame })),
    },
  ],
});
