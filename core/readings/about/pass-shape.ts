import { type About, commonPractice } from '../../units/about.ts';

const raking = {
  rule: 'Shadow ÷ height = 1 ÷ tan(angle between ray and surface): ×1 at 45°, ×11 at 5°.',
  source: `Geometry. That low light shows texture: ${commonPractice.toLowerCase()}`,
} as const;

/** What a pass does to form: texture, evenness, outline and shadows. */
export const aboutPassShape = {
  'rakes-ground': {
    name: 'Rakes the ground',
    says: 'How low the light comes over level ground under the target, and how many times its own height a bump’s shadow is long. Lower light, longer shadows, more texture.',
    ...raking,
  },
  'rakes-target': {
    name: 'Rakes the target',
    says: 'The same on the surface that you see at the target: the smaller the angle, the more its relief shows.',
    ...raking,
  },
  patch: {
    name: 'Patch',
    says: 'How strongly the relief in the patch that you drew shows: 0 is flat. And how much of it the lamp leaves in shadow.',
    rule: 'Contrast = standard deviation of luminance ÷ its mean. In shadow = share of what the beam would reach unhindered that faces away or is mostly hidden.',
    source: 'RMS contrast: E. Peli, J. Opt. Soc. Am. A 7, 1990; taken here over the mean.',
  },
  evenness: {
    name: 'Evenness',
    says: 'How far the light on the lit part of what you see of the subject lies apart, and how much of that distance alone makes. Standing farther off evens it.',
    rule: 'stops = log2(95th ÷ 5th percentile of lux). From distance alone = 2 × log2(farthest ÷ nearest point).',
    source: `Inverse square law; percentiles after Hyndman and Fan, 1996. Their choice is ours.`,
  },
  outline: {
    name: 'Outline',
    says: 'How much of the subject’s outline this pass lights, and by how much that edge is brighter than the face: a rim stands out from one stop or so.',
    rule: 'Lit = points of the outline that get over 1 % of what the beam would give them square on. Stops = log2(mean luminance of the lit edge ÷ mean of the whole face).',
    source: `By rays, first principles. ${commonPractice}`,
  },
  shadow: {
    name: 'Shadow',
    says: 'How long the shadow on level ground is, which way it points from the scene’s north, and how much of it is in the picture.',
    rule: 'length = height × distance ÷ (height of the lamp − height). Endless where the lamp is no higher than the subject’s top. Shares are counted out to 60 m.',
    source: 'Similar triangles.',
  },
  'against-moon': {
    name: 'Against the moon',
    says: 'Whether the lamp throws its shadow the way that moonlight does. 0° agrees, 180° contradicts.',
    rule: 'The angle on the ground between the two shadows. None where lamp or moon stands higher than 85°, or where the moon gives under a tenth of the sky’s light.',
    source: commonPractice,
  },
  'against-glow': {
    name: 'Against the glow',
    says: 'Whether the lamp throws its shadow the way that the glow of a town would have it. 0° agrees, 180° contradicts.',
    rule: 'The angle on the ground between the two. Of towns the one counts that most outshines the sky round it, 10° up.',
    source: commonPractice,
  },
} as const satisfies Record<string, About>;
