/** A patch of the Milky Way that is darker or brighter than its surroundings. Galactic degrees. */
export interface SkyPatch {
  /** Our own short label. */
  readonly label: string;
  readonly longitude: number;
  readonly latitude: number;
  /** Half of its length and of its width. */
  readonly halfLength: number;
  readonly halfWidth: number;
  /** Turn of its length from the plane, toward north galactic latitude as longitude grows. */
  readonly tilt: number;
  /** Dark: magnitudes lost in V at its middle. Bright: what is added, over what is there. */
  readonly strength: number;
}

const patch = (
  label: string,
  longitude: number,
  latitude: number,
  halfLength: number,
  halfWidth: number,
  tilt: number,
  strength: number,
): SkyPatch => ({ label, longitude, latitude, halfLength, halfWidth, tilt, strength });

/**
 * The great dark clouds before the Milky Way, entered by hand so that it is recognised: where they lie, how large, how
 * dark. From memory of atlases, good to a degree or so; strengths by eye.
 */
export const darkClouds: readonly SkyPatch[] = [
  // the great rift, from the Swan down to the middle
  patch('swan, north coal', 88, 2.2, 4, 2, 20, 2.4),
  patch('swan, east', 94, 3.5, 4, 2.4, 20, 1.8),
  patch('swan, heart', 80, -0.3, 5, 2, 5, 2.6),
  patch('swan, neck', 70, -0.6, 8, 1.9, 6, 2.8),
  patch('fox', 58, 0.9, 9, 2, -4, 2.8),
  patch('eagle, east', 46, 1.2, 8, 2.3, -8, 2.8),
  patch('eagle', 34, 3.4, 9, 2.6, -14, 3),
  patch('serpent', 28, 4.4, 6, 2.4, -20, 3),
  patch('snake bearer, north', 18, 8, 9, 2.6, -22, 2.2),
  patch('shield lane', 20, 1, 7, 1.6, 6, 2.2),
  patch('archer lane', 9, 1.2, 7, 1.6, 0, 2.6),
  patch('middle lane', 359, 1.2, 8, 1.5, 0, 2.8),
  patch('scorpion lane', 349, 1, 9, 1.7, 4, 2.4),
  // thin dust north of the middle
  patch('snake bearer, veil', 12, 8, 22, 5, -8, 0.6),
  patch('scorpion, veil', 345, 5, 9, 3.5, 5, 0.9),
  // the horse with the pipe, and the rivers from Antares
  patch('pipe, stem', 358.9, 5.9, 3.2, 0.75, -35, 4),
  patch('pipe, bowl', 1.9, 4, 2, 1.35, 20, 4),
  patch('horse, body', 5, 5, 3.4, 1.5, 12, 3.2),
  patch('horse, neck', 8.4, 7, 3, 0.9, 50, 2.6),
  patch('horse, leg', 3.2, 7.4, 2.4, 0.5, 70, 2.6),
  patch('antares', 353.2, 16.6, 2.2, 1.5, 30, 3.4),
  patch('antares, river', 356.8, 14.2, 4.6, 0.7, -28, 2.6),
  patch('antares, south river', 355.5, 17.2, 3, 0.5, -10, 2),
  patch('wolf, first', 338.8, 16.6, 3, 1.1, 50, 1.8),
  patch('wolf, third', 339.6, 9.4, 2, 0.9, 20, 1.8),
  patch('southern crown', 0.2, -18.2, 3, 0.7, 15, 2.2),
  // the south
  patch('square lane', 331, 0.6, 10, 1.6, 3, 2.6),
  patch('altar', 338, -1.4, 4, 1.2, 10, 1.8),
  patch('compasses', 318, -3.6, 3, 1.2, 20, 2),
  patch('centaur lane', 316, 0.4, 7, 1.5, -3, 2.2),
  patch('coalsack', 302.4, -0.3, 3.7, 2.9, 40, 3),
  patch('fly', 301, -8.6, 1.6, 0.3, 65, 1.8),
  patch('chameleon', 298, -15.5, 3, 1.6, 30, 1.5),
  patch('keel', 292, 0.8, 4, 1, 10, 1.2),
  patch('sails', 266, 0.6, 8, 2, -4, 2.2),
  patch('stern', 250, 1.5, 6, 2, 0, 1.2),
  // the winter side
  patch('big dog', 224, -0.6, 4, 1.5, -10, 1),
  patch('unicorn', 214, -0.5, 6, 2, 5, 1.4),
  patch('hunter, south', 212.5, -19.4, 4.5, 1.4, 5, 1.8),
  patch('hunter, north', 206, -15.2, 3, 1.8, 40, 1.6),
  patch('head of the hunter', 196, -12, 4, 3, 0, 1),
  patch('bull', 171, -15.5, 7, 3.4, -15, 2.4),
  patch('california', 161.5, -9, 6, 1.8, -20, 1.8),
  patch('charioteer', 173, -2.5, 7, 2.6, 5, 1.4),
  patch('hero', 159, -20.5, 4, 2, -30, 1.5),
  patch('giraffe', 144, 4, 9, 3, 8, 1.3),
  patch('queen', 122, 1, 7, 2, 0, 1),
  patch('king', 110, 14, 8, 4, 12, 1.2),
];

/** Where the band is brighter than its surroundings, seen through gaps in the dust. Same source. */
export const starClouds: readonly SkyPatch[] = [
  patch('archer, great', 1, -3.6, 4.2, 2.4, 8, 0.3),
  patch('archer, small', 12.6, -1.7, 1.3, 0.8, 20, 0.9),
  patch('shield', 27, -2.6, 3.2, 2.2, 10, 0.8),
  patch('eagle, south', 38, -3.4, 6, 2, 5, 0.2),
  patch('swan', 69, 3.2, 6.5, 2, 0, 0.55),
  patch('lizard', 98, -2, 5, 2, 0, 0.25),
  patch('queen', 119, -1.5, 6, 2, 0, 0.2),
  patch('double cluster', 135, -3, 4, 1.5, 0, 0.2),
  patch('square', 330, -2.2, 5, 1.5, 0, 0.45),
  patch('centaur', 310, -1.6, 6, 1.6, 0, 0.25),
  patch('cross', 297, -0.6, 3, 1.6, 0, 0.4),
  patch('keel', 287, -0.9, 3.4, 1.6, 0, 0.75),
];
