/** Most frames of a scheme, most passes of a frame, and most entries of a blend. */
export const mostFrames = 64;
