import { type About, commonPractice } from '../../units/about.ts';
import { percentText } from '../caution-texts.ts';
import { limits } from '../limits.ts';

const { hotSpotStops, burntShare, nearAxisDegrees } = limits;

/** Cautions about how a pass lights its subject. */
export const aboutPassCautions = {
  'near-axis': {
    name: 'Flat',
    says: 'A lamp near the camera’s line of sight hides every shadow behind what throws it: no form, no texture.',
    rule: `The angle at the target between camera and lamp: a danger under ${nearAxisDegrees.danger}°, a note under ${nearAxisDegrees.note}°. Of a lamp on its way the least counts.`,
    source: commonPractice,
  },
  burnt: {
    name: 'Burnt',
    says: 'A channel gets more light than the sensor holds: the place comes out white, or in a wrong colour, and no raw file brings it back.',
    rule: `From ${limits.burntStops.toFixed(1)} stops over mid-grey on, log2(78 ÷ 10): a danger at a pass’s target. A warning where no target burns but the picture does, over ${percentText(burntShare.subject)} of it on a subject or ${percentText(burntShare.ground)} on the ground.`,
    source: 'Full at 78 ÷ ISO lx·s, mid-grey at 10 ÷ ISO: ISO 12232. The shares: common practice, no published source.',
  },
  'too-dark': {
    name: 'Too dark',
    says: 'So little light reaches the target that it is lost in the night, or none does.',
    rule: `More than ${-limits.tooDarkStops} stops under mid-grey at the target. Under ${percentText(limits.missesShare)} of the beam’s best there, it has missed: more seconds are no answer. Where none reaches it, a face from ${limits.backLightDegrees}° off the axis on is meant to be dark.`,
    source: commonPractice,
  },
  'unreachable-level': {
    name: 'Out of reach',
    says: 'No level that the lamp has, and no count between 1 s and the shutter’s time, gives the night level from there.',
    rule: `Missed by more than ${limits.unreachableStops} stop whatever is done. Not said of a lamp over 1 stop under the most it can, which is weak by choice, nor of dark faces from ${limits.backLightDegrees}° off the axis on.`,
    source: commonPractice,
  },
  'hot-spot': {
    name: 'Hot spot',
    says: 'The end of the subject that is nearest to the lamp comes out bright, and far brighter than its middle.',
    rule: `The nearest 15 % of the lit face gets over ${hotSpotStops.overMiddle} stops more lux than its middle, and comes out over ${hotSpotStops.overMidGrey} stop above mid-grey; medians.`,
    source: `Inverse square law; the limits: ${commonPractice.toLowerCase()}`,
  },
  uneven: {
    name: 'Uneven',
    says: 'The light falls off so much along the subject that its far end is lost beside its near one.',
    rule: `The nearest 15 % of the lit face gets over ${limits.unevenStops} stops more lux than the farthest 15 %, distance alone makes as much, and the light comes in at ${limits.rakingDegrees}° to the surface or more: what rakes is never even.`,
    source: `Inverse square law; the limits: ${commonPractice.toLowerCase()}`,
  },
  flare: {
    name: 'Flare',
    says: 'The lamp shines on the lens from just outside the picture: ghosts, and a veil over the night’s black.',
    rule: `Within ${limits.flareOutsideDegrees}° of the picture’s edge, with a veil over ${-limits.flareVeilStops} stops under mid-grey. Veil, cd/m² = 0.02 × lux on the lens ÷ π.`,
    source:
      'Veiling glare index: ISO 9358; 2 % as usual, from memory. The limits: common practice, no published source.',
  },
  'lamp-in-frame': {
    name: 'Lamp in the frame',
    says: 'The lens sees the lamp itself: it burns a spot or a streak, or shows a hand.',
    rule: 'Rays from the lens reach any part of the lamp inside the picture: a danger where it shines this way, else a warning.',
    source: 'Geometry, by rays.',
  },
  'lamp-below-ground': {
    name: 'Under the ground',
    says: 'The lamp, or a part of its way, is where it can’t be.',
    rule: 'Height over the level ground under 0.',
    source: 'Geometry.',
  },
  'inside-subject': {
    name: 'Inside a subject',
    says: 'The lamp, or a part of its way, is in something solid: no light gets out.',
    rule: 'Rays from the lamp leave solid parts more often than they enter them.',
    source: 'Geometry, by rays.',
  },
  'beam-at-sky': {
    name: 'Beam at the sky',
    says: 'The beam goes past everything, upward, where aircraft fly and the sky is to stay dark. Local law decides.',
    rule: `Aimed into the sky: a warning. A note where over ${percentText(limits.skyShare)} of the beam goes up past everything and it has more than ${limits.skyCandela} cd: a full moon’s 0.25 lx, 150 m off.`,
    source:
      'Lowest flight over open country: SERA.5005(f), from memory. The share: common practice, no published source.',
  },
  'above-quarter-moon': {
    name: 'Over a quarter moon',
    says: 'Some places allow only dim standing light. This lamp is brighter than that on its subject.',
    rule: `Over ${limits.quarterMoonLux} lx on the subject by a lamp on a stand that is lit for ${percentText(limits.standingShare)} of a star frame or more; a quarter moon gives 0.01 to ${limits.quarterMoonLux} lx. From ${limits.backLightDegrees}° off the axis on, lux where it points.`,
    source:
      'Light of a quarter moon, and that it is the ceiling there: common practice, no published source. Local rules decide.',
  },
} as const satisfies Record<string, About>;
