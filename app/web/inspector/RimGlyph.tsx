import type { PassReading } from '../../../core/readings/pass-reading.ts';

const turnOf = (clock: string): number => {
  const [hours = 0, minutes = 0] = clock.split(':').map(Number);
  return ((hours + minutes / 60) * Math.PI) / 6;
};

/** Seen from above, camera below: which side of the subject is lit, and which way its shadow goes. */
export const RimGlyph = ({ reading }: { reading: PassReading }) => {
  const turn = turnOf(reading.clock);
  const [x, y] = [Math.sin(turn), -Math.cos(turn)];
  const at = (t: number, r: number) => `${(Math.sin(t) * r).toFixed(2)} ${(-Math.cos(t) * r).toFixed(2)}`;
  return (
    <svg className="rim-glyph" viewBox="-12 -12 24 24" width={24} height={24} aria-hidden="true">
      <circle r={4.5} />
      <path className="glyph-lit" d={`M${at(turn - Math.PI / 2, 4.5)}A4.5 4.5 0 0 1 ${at(turn + Math.PI / 2, 4.5)}`} />
      <line x1={-x * 5.5} y1={-y * 5.5} x2={-x * 11} y2={-y * 11} />
    </svg>
  );
};
