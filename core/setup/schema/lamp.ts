import { z } from 'zod';
import { degrees, id, kelvin, metres, name, quantity, rgb } from './fields.ts';

const output = z
  .discriminatedUnion(
    'from',
    [
      z.strictObject({
        from: z.literal('lumens'),
        lumens: quantity('lumens', 0.001, 1e7, 'whole output at full level'),
      }),
      z.strictObject({
        from: z.literal('beam-distance'),
        distanceMetres: metres(0.5, 20000, 'printed beam distance: where the beam’s middle gives 0.25 lux'),
      }),
      z.strictObject({
        from: z.literal('peak-candela'),
        candela: quantity('candela', 0.01, 1e9, 'intensity in the beam’s middle'),
      }),
      z.strictObject({
        from: z.literal('lux-at-1-metre'),
        lux: quantity('lux', 0.01, 1e9, 'measured one metre in front'),
      }),
    ],
    { error: 'must say from what the output is known: "lumens", "beam-distance", "peak-candela" or "lux-at-1-metre"' },
  )
  .describe('output at full level, as the box states it');

const spotBeam = z
  .strictObject({
    shape: z.literal('spot'),
    beamDegrees: degrees(1, 170, 'full angle of the hot spot, where it has fallen to half'),
    spillDegrees: degrees(1, 180, 'full angle of the even spill round it').default(90),
    spillShare: quantity('', 0, 1, 'share of the lumens in the spill').default(0.3),
  })
  .describe('hot spot and spill');
const floodBeam = z
  .strictObject({ shape: z.literal('flood'), degrees: degrees(1, 180, 'full angle of the even cone') })
  .describe('an even cone');
const openBeam = z
  .strictObject({ shape: z.literal('open') })
  .describe('a flat source without optics: falls with the cosine');
const beam = z.discriminatedUnion('shape', [spotBeam, floodBeam, openBeam], {
  error: 'must be a beam with shape "spot", "flood" or "open"',
});

const common = {
  id,
  name,
  output,
  temperatureKelvin: kelvin.default(5600),
  lowestLevelPercent: quantity('%', 0, 100, 'lowest level that the lamp can be dimmed to').default(100),
};
const millimetres = (description: string) => quantity('mm', 1, 5000, description);

export const lamp = z
  .discriminatedUnion(
    'kind',
    [
      z.strictObject({ kind: z.literal('torch'), ...common, diameterMm: millimetres('front glass').default(35), beam }),
      z.strictObject({
        kind: z.literal('panel'),
        ...common,
        widthMm: millimetres('width'),
        heightMm: millimetres('height'),
        beam: beam.default({ shape: 'open' }),
      }),
      z.strictObject({
        kind: z.literal('lantern'),
        ...common,
        diameterMm: millimetres('diameter of the globe').default(80),
      }),
      z.strictObject({ kind: z.literal('tube'), ...common, lengthMm: millimetres('length') }),
    ],
    { error: 'must be a lamp with kind "torch", "panel", "lantern" or "tube"' },
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
