import { type About, commonPractice } from '../../units/about.ts';

/** How much light a pass gives, and for how long. */
export const aboutPassLight = {
  target: {
    name: 'Light at the target',
    says: 'Light on the surface that you see where the cross is, and how bright it comes out. Stops count from mid-grey, which is how 18 % grey looks by day; at +3.0 the sensor is full.',
    rule: 'lux = candela × cos(tilt) ÷ distance². Dose, lx·s = lux × seconds. Luminance L, cd/m² = lux × reflectance ÷ π. Stops = log2(0.65 × L × seconds × ISO ÷ (10 × f-number²)). Shadows by rays, the lamp at its true size.',
    source:
      'Inverse square and cosine laws. Exposure: ISO 12232, q = 0.65, mid-grey at 10 ÷ ISO lx·s, full at 78 ÷ ISO lx·s.',
  },
  count: {
    name: 'Count',
    says: 'How long to leave the lamp on so that its target comes to the night level, and the counts near it that are easy to keep.',
    rule: 'seconds = seconds now × 2^(night level − stops now). Twice the light or twice the time is one stop. A stroke that is walked or swept counts whole.',
    source:
      'A sensor adds up light: first principles. Easy counts, and a shortest count of 1 s: common practice, no published source.',
  },
  beam: {
    name: 'Beam',
    says: 'How wide the beam is, how wide its patch is at the target’s distance, and how much light leaves the lamp after level, gels, cloth and snoot.',
    rule: 'Beam angle = from half the peak on one side to half the peak on the other. Patch = 2 × distance × tan(angle ÷ 2). Lumens = lumens of the lamp × level × transmission.',
    source:
      'Half of the peak is the usual definition of a beam angle, from memory. Torches’ beam distance: 0.25 lx, ANSI/PLATO FL 1.',
  },
  colour: {
    name: 'Colour',
    says: 'Colour temperature of the light behind its gels, before the camera’s white balance.',
    rule: 'mired = 1,000,000 ÷ kelvin. Mireds of gels add, transmissions multiply; what is shown is the nearest black body. Too strong a colour has none.',
    source:
      'CIE 15, nearest point of the Planck locus in CIE 1960 uv. That mireds add: common practice, no published source.',
  },
  paint: {
    name: 'To paint it',
    says: 'The surface of the subject that you see, the light that it needs, and how long a beam that is swept over all of it takes. How far off you stand does not matter then.',
    rule: 'lm·s = dose for the night level × m². Seconds = lm·s ÷ lumens that land on it. Dose for mid-grey, lx·s = π × 10 × f-number² ÷ (0.65 × reflectance × ISO).',
    source: 'Lumen = lux × square metre, first principles; ISO 12232 for the dose.',
  },
  'over-moon': {
    name: 'Over the moon',
    says: 'By how much this pass outshines the moon on its target.',
    rule: 'stops = log2(lux·s of the pass ÷ lux·s of the moon), on the same surface, each with its own shadows, in the same frame.',
    source: `First principles. ${commonPractice}`,
  },
} as const satisfies Record<string, About>;
