/** How high the head of an opening is over the springing of its arch, in widths: a half circle, an equilateral pointed arch. */
export const headShare = { flat: 0, round: 0.5, pointed: Math.sqrt(3) / 2 } as const;
