import { type About, commonPractice } from '../../units/about.ts';
import { mostPoleMetres } from '../../units/body-height.ts';
import { percentText } from '../caution-texts.ts';
import { limits } from '../limits.ts';

const { darkWalking } = limits;

/** Cautions about whoever holds the lamps, and whoever comes by. */
export const aboutPeopleCautions = {
  eye: {
    name: 'Eyes',
    says: 'Somebody may look into a strong beam. Nobody should: in the dark the eye is wide open. No distance is called safe here.',
    rule: `Over ${limits.eyeLux} lx at the eyes of a person in the setup, or, of whoever comes by, candela ÷ distance² ${limits.passerByMetres} m from the lamp.`,
    source:
      'Threshold for cold white light of IEC/TR 62778, from memory; not a safe distance. Risk groups: IEC 62471. Ask the maker or someone qualified.',
  },
  'cannot-walk': {
    name: 'Too far to walk',
    says: 'One person can’t get from the pass before to this one in time.',
    rule: `Shortest way × 1.2 ÷ your speed is more than the time between the passes, for walks of ${limits.stepMetres} m or more: a danger within a frame, a warning between frames. In the dark ${darkWalking.slow} m/s over rough ground and ${darkWalking.quick} m/s on a path are told beside it.`,
    source: commonPractice,
  },
  'person-in-frame': {
    name: 'You show',
    says: 'The lens sees whoever holds a lamp long enough for a ghost, or their shadow changes the picture.',
    rule: `At one place of the picture for over ${percentText(limits.personShare)} of the exposure, and you or what is behind you no more than ${-limits.tooDarkStops} stops under mid-grey. Or people and their shadows change over ${percentText(limits.peopleShare)} of the picture by half a stop.`,
    source: commonPractice,
  },
  'person-shadow': {
    name: 'Your shadow',
    says: 'Whoever holds this lamp stands between another lamp and what that one lights.',
    rule: `For over ${percentText(limits.personShadowShare)} of the other lamp’s time; a tenth is 0.15 stop.`,
    source: `Geometry; the limit: ${commonPractice.toLowerCase()}`,
  },
  terrain: {
    name: 'Terrain',
    says: 'Somebody stands in a hazard that you marked, or has to walk through one. The page knows only what you marked: look at the ground by day and ask who knows it.',
    rule: 'Nearer to the middle of a hazard than its radius, at a lamp or at the camera; or no way is left but through it. A stand in it is a warning, a person a danger.',
    source: 'Geometry. Local knowledge decides.',
  },
  'late-from-camera': {
    name: 'Too short a delay',
    says: 'A frame with another aperture, shutter, ISO, focus or white balance is set by hand. Whoever does that has to walk to the lamp while its delay runs.',
    rule: `The walk from behind the camera takes longer than from the start of the delay to the lamp, and is over ${limits.stepMetres} m.`,
    source: 'Geometry and your own walking speed. A camera that is set from afar needs no walk.',
  },
  'too-quick': {
    name: 'Too quick to walk',
    says: 'A lamp in the hand moves faster than you walk.',
    rule: `Its speed on the fastest leg of its way is more than ${limits.quickerThanWalking} times your walking speed.`,
    source: 'Nobody walks to a tenth: our choice.',
  },
  'too-high': {
    name: 'Too high to hold',
    says: 'A lamp in the hand is higher than anybody holds one, be it on a long pole. Keep poles and masts well away from power lines.',
    rule: `At least for a moment it is over ${mostPoleMetres} m above the feet of whoever holds it, who stands on what lies under it.`,
    source: commonPractice,
  },
} as const satisfies Record<string, About>;
