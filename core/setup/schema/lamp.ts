import { z } from 'zod';
import { degrees, fixed, id, kelvin, metres, name, quantity, rgb } from './fields.ts';
import { testShot } from './test-shot.ts';

const output = z
  .discriminatedUnion(
    'from',
    [
      z.strictObject({
        from: fixed('lumens', 'the output is known in lumens'),
        lumens: quantity('lumens', 0.001, 1e7, 'whole output at full level'),
      }),
      z.strictObject({
        from: fixed('beam-distance', 'the output is known by its printed beam distance'),
        distanceMetres: metres(0.5, 20000, 'printed beam distance: where the beam’s middle gives 0.25 lux'),
      }),
      z.strictObject({
        from: fixed('peak-candela', 'the output is known by its peak intensity'),
        candela: quantity('candela', 0.01, 1e9, 'intensity in the beam’s middle'),
      }),
      z.strictObject({
        from: fixed('lux-at-1-metre', 'the output is known by a measurement at one metre'),
        lux: quantity('lux', 0.01, 1e9, 'measured one metre in front of the glass or skin'),
      }),
      z.strictObject({ from: fixed('measured', 'the output is that of the measured beam') }),
    ],
    {
      error:
        'must say from what the output is known: "lumens", "beam-distance", "peak-candela", "lux-at-1-metre" or "measured"',
    },
  )
  .describe('output at full level, as the box states it');

const spotBeam = z
  .strictObject({
    shape: fixed('spot', 'a hot spot in a wide spill'),
    beamDegrees: degrees(1, 170, 'full angle of the hot spot, where it has fallen to half'),
    spillDegrees: degrees(1, 180, 'full angle of the even spill round it').default(90),
    spillShare: quantity('', 0, 1, 'share of the lumens in the spill').default(0.3),
  })
  .describe('hot spot and spill');
const floodBeam = z
  .strictObject({ shape: fixed('flood', 'an even cone'), degrees: degrees(1, 180, 'full angle of the even cone') })
  .describe('an even cone');
const lobeBeam = z
  .strictObject({
    shape: fixed('lobe', 'a soft lobe: a power of the cosine'),
    degrees: degrees(1, 170, 'full angle where it has fallen to half'),
  })
  .describe('a soft lobe, such as a softbox or a panel behind a grid');
const openBeam = z
  .strictObject({ shape: fixed('open', 'no optics') })
  .describe('a flat source without optics: falls with the cosine');
const measuredBeam = z
  .strictObject({
    shape: fixed('measured', 'as a photometric file says'),
    beamId: id.describe('which measured beam of the setup'),
    turnDegrees: degrees(-360, 360, 'turn about the beam’s axis, counter-clockwise seen from behind the lamp').default(
      0,
    ),
  })
  .describe('a measured beam; its 0° half plane points left, seen from behind the lamp');
const evenBeam = z
  .strictObject({ shape: fixed('even', 'the same in all directions') })
  .describe('the same in all directions');
const beam = z.discriminatedUnion('shape', [spotBeam, floodBeam, lobeBeam, openBeam, measuredBeam], {
  error: 'must be a beam with shape "spot", "flood", "lobe", "open" or "measured"',
});
const bareBeam = z.discriminatedUnion('shape', [evenBeam, measuredBeam], {
  error: 'must be a beam with shape "even" or "measured"',
});

const common = {
  id,
  name,
  output,
  temperatureKelvin: kelvin.default(5600),
  lowestLevelPercent: quantity('%', 0, 100, 'lowest level that the lamp can be dimmed to').default(100),
  correctionStops: quantity(
    'stops',
    -6,
    4,
    'what the lamp really gives, against its stated output: 0 = as stated, -1 = half',
  ).default(0),
  testShots: z
    .array(testShot)
    .max(24, 'must be at most 24')
    .default([])
    .describe('photos that told how much light the lamp really gives'),
};
const millimetres = (description: string) => quantity('mm', 1, 5000, description);

export const lamp = z
  .discriminatedUnion(
    'kind',
    [
      z.strictObject({
        kind: fixed('torch', 'a torch: a round front glass with a beam'),
        ...common,
        diameterMm: millimetres('diameter of the front glass').default(35),
        beam,
      }),
      z.strictObject({
        kind: fixed('panel', 'a flat panel'),
        ...common,
        widthMm: millimetres('width'),
        heightMm: millimetres('height'),
        beam: beam.default({ shape: 'open' }),
      }),
      z.strictObject({
        kind: fixed('lantern', 'a globe that shines all round'),
        ...common,
        diameterMm: millimetres('diameter of the globe').default(80),
      }),
      z.strictObject({
        kind: fixed('tube', 'a straight round tube that lies across the aim'),
        ...common,
        lengthMm: millimetres('length'),
        diameterMm: millimetres('diameter').default(30),
      }),
      z.strictObject({
        kind: fixed('point', 'a bare point of light, without size: its shadows are hard'),
        ...common,
        beam: bareBeam.default({ shape: 'even' }),
      }),
    ],
    { error: 'must be a lamp with kind "torch", "panel", "lantern", "tube" or "point"' },
  )
  .describe('a light in the bag');

export const gel = z
  .strictObject({
    name,
    shiftMired: quantity('mired', -500, 500, 'shift of colour temperature; positive warms').default(0),
    transmission: quantity('', 0, 1, 'share of light that passes').default(1),
    colour: rgb.nullable().default(null).describe('theatrical colour, linear RGB; null = none'),
  })
  .describe('a filter in front of a lamp');

export const cloth = z
  .strictObject({
    stops: quantity('stops', 0, 16, 'light lost'),
    spreadShare: quantity('', 0, 1, 'share of the light that leaves it spread, as from a flat white sheet').default(0),
  })
  .describe('diffusion cloth over a lamp');
