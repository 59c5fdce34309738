/** Share of a ripple's length that its windward side takes; the lee side is shorter and steeper. */
export const windwardShare = 0.66;

/** One side of a ripple from trough (0) to crest (1): a round trough, a crest that is rather sharp. */
const side = (t: number): number => 0.55 * (0.5 - 0.5 * Math.cos(Math.PI * t)) + 0.45 * t ** 1.6;

/**
 * Height of a ripple's section, 0 in the trough to 1 on the crest.
 *
 * @param phase place along the ripple, from trough to trough in the direction that it runs to; whole numbers are troughs
 */
export const rippleSection = (phase: number): number => {
  const p = phase - Math.floor(phase);
  return p < windwardShare ? side(p / windwardShare) : side((1 - p) / (1 - windwardShare));
};

/** Places along a ripple where a mesh of so many corners a ripple has them: trough and crest among them. */
export const sectionKnots = (count: number): number[] => {
  const lee = Math.max(Math.round(count * 0.4), 2);
  const windward = count - lee;
  return [
    ...Array.from({ length: windward }, (_, k) => (windwardShare * k) / windward),
    ...Array.from({ length: lee }, (_, k) => windwardShare + ((1 - windwardShare) * k) / lee),
  ];
};
