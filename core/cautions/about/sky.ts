import type { About } from '../../units/about.ts';
import { percentText } from '../caution-texts.ts';
import { limits } from '../limits.ts';

const { up, nautical, dark } = limits.sunDegrees;

/** Cautions about the sky of the hour. */
export const aboutSkyCautions = {
  'sun-up': {
    name: 'Sun up',
    says: 'It is day. The picture leaves out the sun’s light on the land.',
    rule: `The sun’s middle is over ${up}°: its upper edge is up, with 34′ of refraction and 16′ of its radius.`,
    source: 'As almanac offices define sunrise.',
  },
  twilight: {
    name: 'Twilight',
    says: 'A frame that is to give the picture its stars is taken while the sky is still light.',
    rule: `The sun is over ${dark}°: a note; over ${nautical}°: a warning, as few stars are left then.`,
    source: 'The usual definitions of astronomical and nautical twilight.',
  },
  'sky-burnt': {
    name: 'White sky',
    says: 'Over half of the sky that a frame gives the picture is more than the sensor holds.',
    rule: `The median of the sky is over ${limits.burntStops.toFixed(1)} stops from mid-grey, log2(78 ÷ 10).`,
    source: 'ISO 12232.',
  },
  'moon-in-frame': {
    name: 'Moon in the frame',
    says: 'The camera sees the moon: a white disc, a bright sky round it, and flare in most lenses.',
    rule: `Its middle is in the picture with nothing before it, by night (sun under ${up}°). A warning where the sky round it is full over ${percentText(limits.moonGlareShare)} of the picture.`,
    source: 'Sky round the moon: Krisciunas and Schaefer 1991. The share is our choice.',
  },
  'moon-washes-core': {
    name: 'Moon too bright',
    says: 'The core of the Milky Way is in the picture, but moonlight makes the sky so bright that little of it is left.',
    rule: `Moon up, sun under ${dark}°, the core in the picture, and the sky straight up brighter than ${limits.washedZenithMagnitude} mag/arcsec², that of a small town’s edge, where without the moon it would be darker than that.`,
    source: 'Moonlit sky: Krisciunas and Schaefer 1991. The limit is our choice.',
  },
  'core-hidden': {
    name: 'Core hidden',
    says: 'The camera points at the core of the Milky Way, and land stands before it.',
    rule: `Over ${percentText(limits.coreHiddenShare)} of the ten degrees round its centre that lie in the picture are hidden; told where at least ${percentText(limits.coreInPictureShare)} of them do, the centre itself is in the picture and above the horizon, and the sun is not over ${nautical}°.`,
    source: 'By rays; the limits are our choice.',
  },
  'glow-over-core': {
    name: 'Glow over the core',
    says: 'The glow of towns lies over the core of the Milky Way, brighter than all the rest of the sky there.',
    rule: `cd/m² of the glow ÷ cd/m² of all else is over ${limits.glowOverCore}; the median over what is seen of the core.`,
    source: 'Glow after Garstang 1986, 1989. The limit is our choice.',
  },
  'zone-unknown': {
    name: 'Zone unknown',
    says: 'This machine does not know the time zone, so the hour can’t be placed and the plain light stands in.',
    rule: 'The zone’s name is in no list of this browser.',
    source: 'IANA time zone database, as the browser has it.',
  },
  'clock-change': {
    name: 'Clock change',
    says: 'The clocks of the place skip the time that is set, or show it twice in that night.',
    rule: 'The local time comes never in its zone, or twice. The sky is that of as long after the jump, or of the first of the two.',
    source: 'IANA time zone database, as the browser has it.',
  },
} as const satisfies Record<string, About>;
