/** A walk to the second, a short one to the tenth: nobody counts closer in the dark. */
export const walkText = (seconds: number): string => `${seconds.toFixed(seconds < 9.95 ? 1 : 0)} s`;
