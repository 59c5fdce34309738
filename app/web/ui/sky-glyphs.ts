import { circlePath } from './plan-paths.ts';

/** Glyphs of the sky round the origin, some ten units wide: told by their shape, not by a colour. */

/** The moon: a ring. */
export const moonRing = circlePath([0, 0], 4.5);

/** The core of the Milky Way: a flat oval with a dot. */
export const coreShape = `M-7 3.5A8 3 -27 1 1 7 -3.5A8 3 -27 1 1 -7 3.5Z${circlePath([0, 0], 1)}`;

/** The glow of a town: an arch on the horizon, two strokes; up is away from the middle of the drawing. */
export const glowShape = 'M-6 1A6 6 0 0 1 6 1ZM-3 1A3 3 0 0 1 3 1';
