import { type About, commonPractice } from '../../units/about.ts';
import { percentText } from '../caution-texts.ts';
import { limits } from '../limits.ts';

/** Cautions about frames, and about how they go together. */
export const aboutFrameCautions = {
  'out-of-depth': {
    name: 'Soft',
    says: 'What is lit is not sharp: a target in its own frame, or the near part of what is lit in all of them.',
    rule: 'Distance along the lens’s axis outside near = s (H − f) ÷ (H + s − 2f) and far = s (H − f) ÷ (H − s), with H = f² ÷ (N c) + f.',
    source: 'Thin lens (Gauss); what counts as sharp is a convention about prints, from memory.',
  },
  'focus-apart': {
    name: 'Gap in focus',
    says: 'Between what one frame of the blend has sharp and what the next has, things stand that are sharp in none.',
    rule: 'The near limit of one frame lies beyond the far limit of the one before, and something stands between them.',
    source: 'Thin lens (Gauss).',
  },
  'star-trails': {
    name: 'Star trails',
    says: 'Stars draw lines. Leave it if you want them.',
    rule: `The trail, f × ω × seconds × cos δ ÷ p, is over ${limits.starTrailRatio.toFixed(2)} times as long as the 500 rule lets it be at the equator of the sky: a third of a stop of room, as shutter times are marked.`,
    source: `The 500 rule, the loosest in use: ${commonPractice.toLowerCase()}`,
  },
  'shadows-disagree': {
    name: 'Two shadows',
    says: 'One subject throws its shadow two ways: the eye sees that there were two keys, or that the lamp was not the moon.',
    rule: `Keys of two frames over ${limits.shadowsApartDegrees}° apart on the ground and less than ${limits.fillStops} stops apart; or over ${limits.againstMoonDegrees}° away from moonlight that the lamp outshines. Each with ${percentText(limits.shadowInFrameShare)} of its shadow in the picture and the face no more than ${-limits.tooDarkStops} stops under mid-grey. Lights from both sides, ${limits.twoSidedDegrees}° off the axis or more, are meant; from ${limits.backLightDegrees}° on they only draw an edge.`,
    source: commonPractice,
  },
  'land-over-sky': {
    name: 'Outshines the sky',
    says: 'What is lit is so much brighter than the sky of the blend that it looks pasted in.',
    rule: `A target over ${limits.landOverSkyStops} stops brighter than the median of the sky, as the blend has both; not where the sky is full in the file, ${limits.burntStops.toFixed(1)} stops over mid-grey.`,
    source: commonPractice,
  },
  'silhouette-lost': {
    name: 'Outline lost',
    says: 'A subject that no lamp lights is as bright as the sky behind it: neither a silhouette nor lit.',
    rule: `Less than ${limits.silhouetteStops} stop between the two, with ${percentText(limits.silhouetteShare)} of its outline before the sky, at least one of them no more than ${-limits.tooDarkStops} stops under mid-grey, and no lamp on its face or on ${percentText(limits.rimmedShare)} of its outline.`,
    source: 'Our choice.',
  },
} as const satisfies Record<string, About>;
