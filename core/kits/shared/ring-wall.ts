import type { PartDraft } from '../kit.ts';

/** About how high a course is and how long a stone, metres. */
const courseMetres = 0.16;
const stoneMetres = 0.34;
const joint = { acrossMetres: 0.012, highMetres: 0.01 };
/** How far a stone may stand back from the outside. */
const backMetres = 0.03;

/** A wall that stands in a ring: its radii outside and inside, metres. */
export interface Ring {
  readonly outer: number;
  readonly inner: number;
}

/** A stone of a ring wall, as an outline drawn up: its outer corners are worn off. */
const stone = (
  { outer, inner }: Ring,
  [from, to]: readonly [number, number],
  [low, high]: readonly [number, number],
): PartDraft => {
  const gap = joint.acrossMetres / 2 / outer;
  const [a, b] = [from + gap, to - gap];
  const worn = Math.min((b - a) * 0.12, 0.035 / outer);
  const at = (radius: number, turn: number): [number, number] => [radius * Math.cos(turn), radius * Math.sin(turn)];
  const pieces = 3;
  const face = Array.from({ length: pieces + 1 }, (_, k) => at(outer, a + worn + ((b - a - 2 * worn) * k) / pieces));
  return {
    kind: 'prism',
    name: 'Stone',
    position: [0, 0, low],
    heightMetres: high - low,
    creaseDegrees: 20,
    outline: [at(inner, a), at(outer - 0.03, a), ...face, at(outer - 0.03, b), at(inner, b), at(inner, (a + b) / 2)],
  };
};

/**
 * The stones of a ring wall, course on course; those of the rim end flush with its outside.
 *
 * @param height metres
 * @param random numbers in [0, 1)
 */
export const ringCourses = (ring: Ring, height: number, random: () => number): PartDraft[] => {
  const count = Math.max(Math.round(height / courseMetres), 2);
  const each = height / count;
  return Array.from({ length: count }, (_, course) => {
    const rim = course === count - 1;
    const stones = Math.max(Math.round((2 * Math.PI * ring.outer) / stoneMetres), 8);
    // joints of one course lie over the stones of the one below, more or less
    const cuts = Array.from(
      { length: stones },
      (_, k) => ((k + (course % 2) / 2 + (random() - 0.5) * 0.4) * 2 * Math.PI) / stones,
    );
    return cuts.map((from, k) => {
      const to = k + 1 < stones ? (cuts[k + 1] as number) : (cuts[0] as number) + 2 * Math.PI;
      const back = random() * backMetres;
      const outer = rim ? ring.outer : ring.outer - 0.04 - back;
      const low = course * each - (course === 0 ? 0.05 : 0);
      return stone({ ...ring, outer }, [from, to], [low, (course + 1) * each - (rim ? 0 : joint.highMetres)]);
    });
  }).flat();
};

/** The wall behind the joints, so that no light gets through them. */
export const ringCore = ({ outer, inner }: Ring, height: number): PartDraft => ({
  kind: 'turned',
  name: 'Inside of the wall',
  closed: true,
  profile: [
    [inner + 0.015, -0.05],
    [outer - 0.12, -0.05],
    [outer - 0.12, height - 0.02],
    [inner + 0.015, height - 0.02],
  ],
  sides: 40,
});
