import { type About, commonPractice } from '../../units/about.ts';

/** What is told of a frame as a whole. */
export const aboutFrame = {
  depth: {
    name: 'Sharp from, to',
    says: 'What looks sharp in a print at arm’s length, counted from the lens. Focused at the hyperfocal distance, all from half of it to infinity is.',
    rule: 'H = f² ÷ (N c) + f. Near = s (H − f) ÷ (H + s − 2f), far = s (H − f) ÷ (H − s). f the focal length, N the exact f-number, s the focus, c the largest blur that counts: the sensor’s diagonal ÷ 1442, or two pixels, as the camera’s strip says.',
    source:
      'Thin lens (Gauss). Diagonal ÷ 1442: a convention about prints, from memory. Two pixels: our choice. Diffraction is left out.',
  },
  stars: {
    name: 'Star trails',
    says: 'How long a line a star draws while the shutter is open, in pixels of the sensor, in the middle of the picture and where it is longest.',
    rule: 'pixels = f × ω × seconds × cos δ ÷ p, longer toward the corners, as the lens stretches them. ω = 1 turn in 86,164 s, δ the star’s declination, p the pixel.',
    source:
      'Geometry and the sidereal day. The rules below: two published formulas, and the 500 rule, common practice.',
  },
  'key-to-fill': {
    name: 'Key over fill',
    says: 'By how much the strongest light on the subject leads over the next one there. Near 0 is flat; from 1.5 or so the subject looks modelled.',
    rule: 'stops = log2(key ÷ fill), each by the 95th percentile of its lx·s on the same face. Without a second lamp, moon and sky are the fill.',
    source: `Stops are a logarithm to base 2. The ratios: ${commonPractice.toLowerCase()}`,
  },
  'patch-all-light': {
    name: 'Patch in all light',
    says: 'How strongly the relief in the patch shows under all lamps of the frame, moon and sky together. Fill takes contrast away.',
    rule: 'Contrast = standard deviation of luminance ÷ its mean.',
    source: 'RMS contrast: E. Peli, J. Opt. Soc. Am. A 7, 1990; taken here over the mean.',
  },
  unlit: {
    name: 'Unlit land',
    says: 'How bright level ground of 18 % grey comes out by moon and sky alone, without lamps.',
    rule: 'stops = log2(0.65 × (lux × 0.18 ÷ π) × seconds × ISO ÷ (10 × f-number²)).',
    source: 'ISO 12232 for the exposure; moon and sky after the sources named under Hour.',
  },
  'sky-behind': {
    name: 'Sky behind',
    says: 'By how much the sky right behind the subject’s outline is brighter than the subject: unlit, that makes a silhouette; lit, it tells whether the lamp lifts it over its sky.',
    rule: 'stops = log2(median of the sky just past the outline ÷ median of what you see of the subject).',
    source: 'Medians by rays, our choice.',
  },
  burnt: {
    name: 'Burnt',
    says: 'Over how much of the picture a channel is more than the sensor holds: no detail is left there.',
    rule: 'A channel is full from 78 ÷ ISO lx·s on the sensor on, 3.0 stops over mid-grey, after the white balance, as a camera’s histogram counts.',
    source: 'ISO 12232.',
  },
} as const satisfies Record<string, About>;
