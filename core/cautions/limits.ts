import { saturationStops } from '../camera/exposure.ts';

/** Where cautions begin. Common practice, no published source, unless said otherwise. */
export const limits = {
  /** Off the camera's axis, degrees: flat below the first, weakly modelled below the second. */
  nearAxisDegrees: { danger: 20, note: 30 },
  /** Stops over mid-grey at which the sensor saturates: log2(78/10), ISO 12232. */
  burntStops: saturationStops,
  /** Stops under mid-grey beyond which a lit target is lost in the night; night level is usually 1.5 under. */
  tooDarkStops: -4,
  /** Share of the beam's best light that lands, under which it has missed: more seconds are no answer. */
  missesShare: 0.005,
  /** Off the camera's axis from where on a dark face is what back light is for, degrees. */
  backLightDegrees: 100,
  /** Walks shorter than this are a lean or a step, metres. */
  stepMetres: 1,
  /** Speeds of walking in the dark that are told beside the one that is set, metres a second: rough ground, a path. */
  darkWalking: { slow: 0.5, quick: 0.8 },
  /** Share of the exposure that a body may be seen at one place of the picture before it begins to register. */
  personShare: 0.1,
  /** Share of a lamp's light on its target that somebody may stand in: a tenth is 0.15 stop. */
  personShadowShare: 0.1,
} as const;
