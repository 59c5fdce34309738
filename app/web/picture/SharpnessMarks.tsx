import type { BlurLines } from '../state/marks.ts';
import { linePath } from './line-path.ts';

interface SharpnessMarksProps {
  readonly blurs: readonly BlurLines[];
  readonly size: readonly [width: number, height: number];
  /** Units of the drawing that make a pixel. */
  readonly pixel: number;
}

/** The blurrier, the more broken: told apart without colour, and each has its number. */
const dashes = ['none', '12 4', '6 4', '1.5 4'];

/** Where the numbers stand; those of lines that run close together stand side by side. */
const numbersOf = (blurs: readonly BlurLines[], [width, height]: readonly [number, number], pixel: number) => {
  const placed: { readonly pixels: number; readonly x: number; readonly y: number }[] = [];
  for (const { pixels, labels } of blurs)
    for (const label of labels) {
      let x = Math.min(Math.max(label[0] * width, 26 * pixel), width - 26 * pixel);
      const y = Math.min(Math.max(label[1] * height, 14 * pixel), height - 6 * pixel);
      const isTaken = () => placed.some((p) => Math.abs(p.x - x) < 48 * pixel && Math.abs(p.y - y) < 15 * pixel);
      while (isTaken()) x += 12 * pixel;
      placed.push({ pixels, x, y });
    }
  return placed;
};

/** Lines of equal blur, like height lines on a map: 1, 2, 4 and 8 pixels of the sensor. */
export const SharpnessMarks = ({ blurs, size, pixel }: SharpnessMarksProps) => {
  return (
    <g aria-hidden="true" className="picture-sharpness">
      {blurs.map(({ pixels, lines }, b) => {
        const path = lines.map((line) => linePath(line, size)).join('');
        return (
          <g key={pixels} data-pixels={pixels}>
            <path className="picture-blur-case" d={path} />
            <path className="picture-blur-line" d={path} strokeDasharray={dashes[b]} />
          </g>
        );
      })}
      {numbersOf(blurs, size, pixel).map(({ pixels, x, y }) => (
        <text key={`${pixels}/${x}/${y}`} className="picture-name" x={x} y={y} fontSize={12 * pixel}>
          {pixels} px
        </text>
      ))}
    </g>
  );
};
