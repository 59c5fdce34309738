import { saturationStops } from '../camera/exposure.ts';

/** Where cautions begin. Common practice, no published source, unless said otherwise. */
export const limits = {
  /** Off the camera's axis, degrees: flat below the first, weakly modelled below the second. */
  nearAxisDegrees: { danger: 20, note: 30 },
  /** Stops over mid-grey at which the sensor saturates: log2(78/10), ISO 12232. */
  burntStops: saturationStops,
  /** Share of the picture with a full channel from where on it is no mere glint; the ground near a lamp is soon that bright. */
  burntShare: { subject: 0.005, ground: 0.02 },
  /** Stops under mid-grey beyond which a lit target is lost in the night; night level is usually 1.5 under. */
  tooDarkStops: -4,
  /** Share of the beam's best light that lands, under which it has missed: more seconds are no answer. */
  missesShare: 0.005,
  /** Off the camera's axis from where on a dark face is what back light is for, degrees. */
  backLightDegrees: 100,
  /** Stops by which the wanted level is missed whatever is done: less nobody minds. */
  unreachableStops: 0.5,
  /** Light on the near end of a face over that on its middle, stops, and how bright that end is, stops over mid-grey. */
  hotSpotStops: { overMiddle: 1.5, overMidGrey: 1 },
  /** Light on the near end of a face over that on its far end, stops: an arch 20 m wide lit from 12 m has 2.8, from 6 m 4.2. */
  unevenStops: 3.5,
  /** Between ray and surface, degrees: a lamp that rakes a surface for its texture never lights it evenly. */
  rakingDegrees: 15,
  /** Past the picture's edge, degrees: farther out a hood shades the glass. */
  flareOutsideDegrees: 15,
  /** Veil over the whole picture, stops from mid-grey: the black of night lies lower. */
  flareVeilStops: -5,
  /** Past the 500 rule, the loosest in use, as a ratio of seconds: shutter times are marked in thirds of a stop. */
  starTrailRatio: 2 ** (1 / 3),
  /** Light of a quarter moon, lux: 0.01 to 0.03; where only dim standing light is allowed it is the ceiling. */
  quarterMoonLux: 0.03,
  /** Share of the frame for which a lamp on a stand is lit to be a standing light. */
  standingShare: 0.5,
  /** Share of the beam, within half its peak, that goes past everything above the horizon. */
  skyShare: 0.5,
  /**
   * Candela that give the light of a full moon, 0.25 lx (to which torches are rated), 150 m away: lower no aircraft flies
   * over open country as a rule (SERA.5005(f), from memory).
   */
  skyCandela: 0.25 * 150 ** 2,
  /**
   * Lux at the eye from where on cold white light is told: the threshold of IEC/TR 62778 for 5750 K and more, from memory.
   * Not a safe distance.
   */
  eyeLux: 500,
  /** How near to a lamp helpers and passers-by come, metres. */
  passerByMetres: 5,
  /** Walks shorter than this are a lean or a step, metres. */
  stepMetres: 1,
  /** Speeds of walking in the dark that are told beside the one that is set, metres a second: rough ground, a path. */
  darkWalking: { slow: 0.5, quick: 0.8 },
  /** Speed of a carried lamp over that of walking from where on it is told: nobody walks to a tenth. */
  quickerThanWalking: 1.1,
  /** Share of the exposure that a body may be seen at one place of the picture before it begins to register. */
  personShare: 0.1,
  /** Share of the picture that people and their shadows may change: a body 10 m off is some 0.6 % of a wide picture. */
  peopleShare: 0.005,
  /** Share of a lamp's light on its target that somebody may stand in: a tenth is 0.15 stop. */
  personShadowShare: 0.1,
  /**
   * Lit land over the sky of a blend, stops. Night level, 1.5 under mid-grey, is at most 2.7 over the darkest natural sky,
   * 22 mag/arcsec2, in the dimmest star frames in use: what is further over outshines any sky.
   */
  landOverSkyStops: 3,
  /** Shadows of one subject in a blend, degrees apart on the ground: from here on one sees that there were two keys. */
  shadowsApartDegrees: 60,
  /** Off the camera's axis from where on lights from both sides are meant as such: three o'clock and nine, with some room. */
  twoSidedDegrees: 75,
  /** A light so many stops under another on the same face is its fill: 3:1 is modelled, and leaves one shadow that counts. */
  fillStops: 1.5,
  /** Between a lamp's shadow and the moon's, degrees: from here on they point opposite ways. */
  againstMoonDegrees: 90,
  /**
   * Heights of the sun, degrees: over the first its upper edge is up (34' of refraction, 16' of its radius, as almanacs take
   * it); under the last twilight is over, and from the middle one up it lights the sky so that few stars are left (nautical
   * twilight): the usual definitions.
   */
  sunDegrees: { up: -0.833, nautical: -12, dark: -18 },
  /** Share of the picture that the sky round a moon in it fills beyond what the sensor holds, from where on it spoils the frame; our choice. */
  moonGlareShare: 0.01,
  /** Zenith in mag/arcsec2, brighter than which moonlight hides most of the Milky Way: that of a small town's edge; our choice. */
  washedZenithMagnitude: 20.5,
  /** Share of the Milky Way's core within the picture that may stand behind land; our choice. */
  coreHiddenShare: 0.5,
  /** Least share of the core that must lie within the picture to be meant; our choice. */
  coreInPictureShare: 0.25,
  /** Glow of a town over the light of the sky that it lies on, as a ratio, where the core is seen; our choice. */
  glowOverCore: 1,
  /** Sky and unlit subject before it, stops apart: nearer to each other the outline is lost; our choice. */
  silhouetteStops: 0.5,
  /** Share of an outline that stands before the sky from where on it is a silhouette; our choice. */
  silhouetteShare: 0.25,
  /** Share of an outline that a lamp rims, from where on it shows before any sky; our choice. */
  rimmedShare: 0.1,
  /** Share of a shadow within the picture from where on it is seen. */
  shadowInFrameShare: 0.1,
} as const;
