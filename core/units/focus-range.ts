/** Nearest and farthest focus that the document takes, metres. */
export const nearestFocusMetres = 0.05;
/** The farthest focus stands for infinity: the stars. */
export const infinityMetres = 10_000;
