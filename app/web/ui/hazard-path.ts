/** Between strokes along the ring, and how far they reach inward, in units of the drawing. */
const [spacing, depth] = [9, 8];
/** Most strokes of a ring, however large it is drawn. */
const mostStrokes = 240;

/** A ring round nought whose edge is hatched inward, each stroke leaning, as one SVG path: told by its shape alone. */
export const hazardPath = (radius: number): string => {
  const count = Math.min(Math.max(Math.round((2 * Math.PI * radius) / spacing), 12), mostStrokes);
  const inner = Math.max(radius - depth, radius * 0.5);
  const at = (turn: number, out: number) => `${(out * Math.cos(turn)).toFixed(1)} ${(out * Math.sin(turn)).toFixed(1)}`;
  const r = radius.toFixed(1);
  const ring = `M${at(0, radius)}A${r} ${r} 0 1 1 ${at(Math.PI, radius)}A${r} ${r} 0 1 1 ${at(0, radius)}`;
  const strokes = Array.from({ length: count }, (_, k) => {
    const turn = (2 * Math.PI * k) / count;
    return `M${at(turn, radius)}L${at(turn + (0.9 * 2 * Math.PI) / count, inner)}`;
  });
  return ring + strokes.join('');
};
