/** Glow of a town over the horizon. */
export interface GlowDome {
  /** True bearing of its middle. */
  readonly bearingRadians: number;
  /** Half the width of the town along the horizon. */
  readonly halfWidthRadians: number;
  /** What it adds ten degrees above the horizon at its bearing. */
  readonly luminanceAt10DegreesCdM2: number;
  /** Of the town's lamps. */
  readonly temperatureKelvin: number;
}

/** From the first height up turns count for less and less, up to none straight up, where all bearings meet. */
const turnsFade = { fromDegrees: 60, toDegrees: 90 } as const;

/** The closed form is fitted from 2 degrees up: below 4 it flattens toward its value there. */
const lowestDegrees = 2;

/** What a glow has at one height, apart from the turn from its bearing. */
export interface GlowAtHeight {
  /** At its bearing, over that at 10 degrees. */
  readonly level: number;
  /** Square of the half width at which it falls to a half, of a town that is a point, degrees squared. */
  readonly squareWidth: number;
  /** Share of a turn that counts. */
  readonly turnShare: number;
}

/**
 * A town's glow at a height. Closed form fitted to Garstang's single scattering for towns 15 to 100 km away (sky.md 4.7;
 * rms 0.15 to 0.41 mag): it falls, and spreads wider, the higher one looks.
 */
export const glowAtHeight = (altitudeDegrees: number): GlowAtHeight => {
  const height = Math.max(altitudeDegrees, 0);
  const altitude = height < 2 * lowestDegrees ? lowestDegrees + height ** 2 / (4 * lowestDegrees) : height;
  const fading = (turnsFade.toDegrees - altitude) / (turnsFade.toDegrees - turnsFade.fromDegrees);
  const share = Math.min(Math.max(fading, 0), 1);
  return {
    level: ((altitude + 6) / 16) ** -2.9,
    squareWidth: (4.3 + 0.89 * altitude) ** 2,
    turnShare: share * share * (3 - 2 * share),
  };
};

/**
 * Glow of a town at a height and a turn from its bearing, over that at 10 degrees at its bearing. The town's own half width
 * adds to that of its glow as the root of squares.
 */
export const glowShape = (altitudeDegrees: number, turnDegrees: number, halfWidthDegrees: number): number => {
  const { level, squareWidth, turnShare } = glowAtHeight(altitudeDegrees);
  return level / (1 + (turnDegrees * turnShare) ** 2 / (squareWidth + halfWidthDegrees * halfWidthDegrees));
};
