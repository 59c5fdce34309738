import { useMemo } from 'react';
import { type Placing, worldFromFile } from '../scans/place-scan.ts';
import { worded } from '../ui/lengths.ts';

const [width, height] = [300, 230];
/** Room round the points. */
const margin = 16;
/** A person to compare with, metres. */
const personMetres = 1.75;
const personPath =
  'M-0.14 0L-0.16 -0.85L-0.23 -1.42H0.23L0.16 -0.85L0.14 0ZM-0.11 -1.6A0.11 0.15 0 1 0 0.11 -1.6A0.11 0.15 0 1 0 -0.11 -1.6Z';

/** Some corners of the scan, seen from the south, beside a person. */
export const PointsView = ({ points, placing }: { points: Float32Array; placing: Placing }) => {
  const { path, person, wide } = useMemo(() => {
    const m = worldFromFile(placing);
    const row = (r: number, p: number) =>
      (m[r * 3] as number) * (points[p] as number) +
      (m[r * 3 + 1] as number) * (points[p + 1] as number) +
      (m[r * 3 + 2] as number) * (points[p + 2] as number);
    const seen: (readonly [number, number])[] = [];
    for (let p = 0; p < points.length; p += 3) seen.push([row(0, p), row(1, p)]);
    const xs = seen.map(([x]) => x);
    const ys = seen.map(([, y]) => y);
    const least = (values: readonly number[]) => values.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
    const most = (values: readonly number[]) => values.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
    const [x0, x1, y0, y1] = [least(xs), most(xs), least(ys), most(ys)];
    const across = x1 - x0 + 0.8;
    const scale = Math.min((width - 2 * margin) / across, (height - 2 * margin) / Math.max(y1 - y0, personMetres));
    const left = (width - across * scale) / 2;
    const foot = height - margin;
    const dots = seen.map(
      ([x, y]) => `M${(left + (x - x0) * scale).toFixed(1)} ${(foot - (y - y0) * scale).toFixed(1)}h1`,
    );
    return {
      path: dots.join(''),
      person: `translate(${(left + (x1 - x0 + 0.5) * scale).toFixed(1)} ${foot}) scale(${scale.toFixed(4)})`,
      wide: scale,
    };
  }, [points, placing]);
  return (
    <svg
      viewBox={`0 0 ${width} ${height}`}
      className="scan-points"
      role="img"
      aria-label={worded('The scan from the south, beside a person of 1.75 m')}
    >
      <path d={`M0 ${height - margin}H${width}`} className="scan-ground" />
      <path d={path} className="scan-dots" />
      <path d={personPath} transform={person} className="scan-person" strokeWidth={1.5 / wide} />
    </svg>
  );
};
