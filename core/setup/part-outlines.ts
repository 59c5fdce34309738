import type { PartOf } from './schema/setup.ts';

type Place = readonly [number, number];

/** Signed area of a closed outline, positive counter-clockwise. */
const areaOf = (points: readonly Place[]): number =>
  points.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = points[(i + 1) % points.length] as Place;
    return sum + u * nextV - v * nextU;
  }, 0) / 2;

/** Nearer to the axis than this a profile lies on it, metres. */
const axisMetres = 1e-5;

/**
 * The profile of a turned part as it is drawn: from the foot up along the outside, with lids to the axis where it is
 * open. [distance from the axis, up] in metres.
 */
export const turnedProfile = ({ profile, closed }: PartOf<'turned'>): readonly Place[] => {
  const points = profile.map(([out, up]): Place => [out < axisMetres ? 0 : out, up]);
  const [first, last] = [points[0] as Place, points.at(-1) as Place];
  const onAxis = (up: number): Place => [0, up];
  const whole = closed
    ? points
    : [...(first[0] > 0 ? [onAxis(first[1])] : []), ...points, ...(last[0] > 0 ? [onAxis(last[1])] : [])];
  const isSame = (a: Place, b: Place | undefined) => b !== undefined && a[0] === b[0] && a[1] === b[1];
  const distinct = whole.filter((point, i) => !isSame(point, i > 0 ? whole[i - 1] : closed ? whole.at(-1) : undefined));
  return areaOf(distinct) >= 0 ? distinct : distinct.reverse();
};

/** Stretches of a profile that are turned: those that lie on the axis are left out. */
export const turnedStretches = (
  profile: readonly Place[],
  closed: boolean,
): readonly (readonly [from: Place, to: Place])[] =>
  profile
    .map((from, i) => [from, profile[(i + 1) % profile.length] as Place] as const)
    .filter(([from, to], i) => (closed || i + 1 < profile.length) && (from[0] > 0 || to[0] > 0));

/** The sections of a loft, each counter-clockwise seen from the south and beginning at its own first point. */
export const loftSections = ({ sections }: PartOf<'loft'>): PartOf<'loft'>['sections'] =>
  sections.map((section) =>
    areaOf(section.outline) >= 0
      ? section
      : { ...section, outline: [...section.outline.slice(0, 1), ...section.outline.slice(1).reverse()] },
  );
