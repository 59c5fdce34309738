/**
 * The lit part of the moon's disc as an SVG path round the origin: half a circle and half an ellipse.
 *
 * @param radius of the disc, in the drawing's units
 * @param litShare 0 = new, 1 = full
 * @param turnRadians where its lit side points on the drawing, from the drawing's right, clockwise
 */
export const moonShape = (radius: number, litShare: number, turnRadians: number): string => {
  const share = Math.min(Math.max(litShare, 0), 1);
  if (share === 0) return '';
  const r = radius.toFixed(2);
  const [c, s] = [Math.cos(turnRadians), Math.sin(turnRadians)];
  const tip = (side: 1 | -1) => `${(-side * s * radius).toFixed(2)} ${(side * c * radius).toFixed(2)}`;
  const across = Math.abs(1 - 2 * share) * radius;
  const degrees = ((turnRadians * 180) / Math.PI).toFixed(2);
  // the terminator bulges toward the dark side once over half is lit
  const sweep = share > 0.5 ? 1 : 0;
  return `M${tip(-1)}A${r} ${r} 0 0 1 ${tip(1)}A${across.toFixed(2)} ${r} ${degrees} 0 ${sweep} ${tip(-1)}Z`;
};
