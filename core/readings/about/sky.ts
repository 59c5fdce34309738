import type { About } from '../../units/about.ts';

const places =
  'Positions by astronomy-engine, held against an independent library; level horizon at the height of the sea.';

/** What is told of the night and the hour. */
export const aboutSky = {
  sun: {
    name: 'Sun',
    says: 'When the sun sets and rises, or where it stands: a ridge hides it sooner.',
    rule: 'It rises and sets where its middle is 0.833° under the level horizon: 34′ of refraction and 16′ of its radius.',
    source: `As almanac offices define it. ${places}`,
  },
  twilight: {
    name: 'Dusk, dark and dawn',
    says: 'How far the night has come. In civil twilight one sees to work, in nautical the horizon shows, after astronomical twilight it is dark.',
    rule: 'The sun’s middle at 6°, 12° and 18° under the horizon: civil, nautical, astronomical. Dark is under 18°.',
    source: `The usual definitions. ${places}`,
  },
  moon: {
    name: 'Moon',
    says: 'When the moon rises and sets, where it stands, and how much of its disc is lit.',
    rule: 'Lit share = (1 + cos of the phase angle) ÷ 2, as seen from the place.',
    source: places,
  },
  core: {
    name: 'Core',
    says: 'Where the core of the Milky Way stands, and when it is up in the dark without a moon.',
    rule: 'The direction of galactic longitude and latitude 0°, turned to the place and the hour.',
    source: 'Galactic pole of Hipparcos, ESA SP-1200, section 1.5.3; turn of the earth by astronomy-engine.',
  },
  moonlight: {
    name: 'Moonlight',
    says: 'Light of the moon on a surface that faces it, with what thin cloud spreads close round it. A full moon high up gives about 0.25 lx.',
    rule: 'V = −12.73 + 0.026 |a| + 4 × 10⁻⁹ a⁴ at the moon’s mean distance, a the phase angle in degrees; lux = 2.54 × 10⁻⁶ × 10^(−0.4 V), less what the air takes.',
    source: 'Allen; Krisciunas and Schaefer 1991, eq. 9. Air mass: Kasten and Young 1989.',
  },
  'moon-shadows': {
    name: 'Its shadows',
    says: 'Which way moonlight throws shadows, as a true bearing, and how long they are on level ground.',
    rule: 'Bearing = that of the moon + 180°. Length ÷ height = 1 ÷ tan(height of the moon). Under a tenth of the sky’s light it throws none that is seen.',
    source: 'Geometry; the tenth is our choice.',
  },
  zenith: {
    name: 'Sky straight up',
    says: 'How dark the sky is overhead with moon, twilight and towns: 22 is the darkest natural sky, 20.5 the edge of a small town.',
    rule: 'magnitude per square arcsecond = −2.5 × log10(cd/m² ÷ 108,000).',
    source:
      'As makers of sky meters print it. Moonlit sky: Krisciunas and Schaefer 1991; twilight: Patat et al. 2006; towns: after Garstang 1986, 1989.',
  },
  'sky-light': {
    name: 'Sky on the ground',
    says: 'Light of the whole sky on level ground in the open, without the moon’s disc and without lamps.',
    rule: 'lux = sum over the sky of cd/m² × solid angle × sine of the height.',
    source: 'The same skies as straight up, added up.',
  },
} as const satisfies Record<string, About>;
