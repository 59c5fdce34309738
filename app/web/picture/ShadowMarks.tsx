import { useId } from 'react';
import type { PassShadows } from '../state/marks.ts';
import { linePath } from './line-path.ts';
import type { PassInk } from './pass-inks.ts';
import { ringArea } from './ring-area.ts';

interface ShadowMarksProps {
  readonly shadows: readonly PassShadows[];
  readonly inks: ReadonlyMap<string, PassInk>;
  readonly size: readonly [width: number, height: number];
  /** Units of the drawing that make a pixel. */
  readonly pixel: number;
}

/** Between hatch lines, in pixels. */
const spacing = 7;
/** Square pixels under which a shadow is outlined faintly, and under which it is not outlined: grass would hide the rest. */
const [small, speck] = [600, 70];

/** Heights for the names: in their shadows, each at least a line below those above it. */
const nameHeights = (shadows: readonly PassShadows[], height: number, lineHeight: number): number[] => {
  const taken: number[] = [];
  return shadows.map(({ middle }) => {
    let y = (middle?.[1] ?? 0) * height;
    while (taken.some((other) => Math.abs(other - y) < lineHeight)) y += lineHeight / 4;
    if (middle) taken.push(y);
    return y;
  });
};

/** The shadows that each lamp casts, outlined in its dash and hatched its own way, with its name in the largest. */
export const ShadowMarks = ({ shadows, inks, size, pixel }: ShadowMarksProps) => {
  const id = useId();
  const step = spacing * pixel;
  const drawn = shadows.flatMap((each) => {
    const key = `${each.frameId}/${each.passId}`;
    const ink = inks.get(key);
    return ink && each.rings.length > 0 ? [{ ...each, key, ink }] : [];
  });
  const heights = nameHeights(drawn, size[1], 17 * pixel);
  const pathOf = (rings: PassShadows['rings'], least: number, most: number) =>
    rings
      .filter((ring) => {
        const squarePixels = ringArea(ring, size) / pixel ** 2;
        return squarePixels >= least && squarePixels < most;
      })
      .map((ring) => `${linePath(ring, size)}Z`)
      .join('');
  return (
    <g aria-hidden="true">
      {drawn.map(({ key, ink, rings }, s) => {
        const large = pathOf(rings, small, Number.POSITIVE_INFINITY);
        return (
          <g key={key} className="picture-shadow" data-pass={key} style={{ color: ink.colour }}>
            <pattern
              id={`${id}-${s}`}
              width={step}
              height={step}
              patternUnits="userSpaceOnUse"
              patternTransform={`rotate(${ink.hatchDegrees})`}
            >
              <path className="picture-hatch" d={`M0 ${step / 2}H${step}`} strokeWidth={pixel} />
            </pattern>
            <path
              className="picture-shadow-fill"
              d={pathOf(rings, 0, Number.POSITIVE_INFINITY)}
              style={{ fill: `url(#${id}-${s})` }}
            />
            <path className="picture-shadow-faint" d={pathOf(rings, speck, small)} strokeDasharray={ink.dash} />
            <path className="picture-shadow-case" d={large} />
            <path className="picture-shadow-line" d={large} strokeDasharray={ink.dash} />
          </g>
        );
      })}
      {drawn.map(({ key, ink, middle }, s) => {
        const x = Math.min(Math.max((middle?.[0] ?? 0) * size[0], 40 * pixel), size[0] - 40 * pixel);
        return (
          <text key={key} className="picture-name" x={x} y={(heights[s] as number) + 4 * pixel} fontSize={13 * pixel}>
            {ink.name}
          </text>
        );
      })}
    </g>
  );
};
