import { seededRandom } from '../random.ts';
import { planeNoise } from './plane-noise.ts';
import { smoothstep } from './sheet.ts';

/** An extra crest: it begins at one place, ends at another, and forks off its neighbours at both. */
interface ExtraCrest {
  /** Both ends lie on this line, metres. */
  readonly u: number;
  readonly vFrom: number;
  readonly vTo: number;
}

/** How ripples lie: straight and even where all of it is left out. */
export interface RipplePattern {
  /** Ripples passed up to a place, in whole ripples and parts; grows with u. Jumps by whole numbers across the lines of extra crests. */
  readonly phase: (u: number, v: number) => number;
  /** How much of the full height the ripples have there, 0 to 1. */
  readonly strength: (u: number, v: number) => number;
  /** Whole ripples that the phase gains from one line of constant v to another, by `u`. */
  readonly gained: (vLeft: number, vRight: number) => (u: number) => number;
}

/** Angle round one end of an extra crest, in turns, without a jump along a line of constant v. */
const turnsRound = (u: number, v: number): number => {
  const along = Math.atan(u / (v === 0 ? 1e-9 : v)) / (2 * Math.PI);
  return v < 0 ? along - 0.5 : along;
};

/** `Math.hypot` takes ten times as long, and is asked a million times. */
const distance = (x: number, y: number): number => Math.sqrt(x * x + y * y);

/** How far an extra crest pushes its neighbours aside, in ripples. */
const reach = 8;

/**
 * Ripples as wind and water leave them: crests wander, their height comes and goes, and here and there one crest more
 * begins and ends, so that crests fork. A fork is a dislocation of the phase: it gains one whole turn round its end.
 *
 * @param wanderMetres from bend to bend along a crest
 */
export const naturalRipples = (
  spacingMetres: number,
  radiusMetres: number,
  wanderMetres: number,
  seed: number,
): RipplePattern => {
  const random = seededRandom(seed);
  const noise = planeNoise(seed);
  const s = spacingMetres;
  const field = 2 * radiusMetres;
  const count = Math.min(Math.round((field / s) ** 2 / 60), 4000);
  const crests = Array.from({ length: count }, (): ExtraCrest => {
    const [u, v, length] = [random(), random(), random()];
    const vFrom = (v - 0.5) * field;
    return { u: (u - 0.5) * field, vFrom, vTo: vFrom + s * (4 + 8 * length) };
  });
  const bins = new Map<number, ExtraCrest[]>();
  const bin = reach * s;
  const binOf = (i: number, j: number) => (i + 4096) * 8192 + (j + 4096);
  for (const crest of crests)
    for (let i = -1; i <= 1; i++)
      for (let j = -1; j <= 3; j++) {
        const key = binOf(Math.floor(crest.u / bin) + i, Math.floor(crest.vFrom / bin) + j);
        const list = bins.get(key) ?? [];
        list.push(crest);
        bins.set(key, list);
      }
  const none: readonly ExtraCrest[] = [];
  const near = (u: number, v: number) => bins.get(binOf(Math.floor(u / bin), Math.floor(v / bin))) ?? none;
  // every line of constant v meets few extra crests; they are looked up once a line
  let line = Number.NaN;
  let onLine: number[] = [];
  const passed = (u: number, v: number): number => {
    if (v !== line) {
      line = v;
      onLine = crests.filter(({ vFrom, vTo }) => vFrom < v && v <= vTo).map((crest) => crest.u);
    }
    return onLine.reduce((sum, at) => (u > at ? sum + 1 : sum), 0);
  };
  /** What one extra crest adds to the phase beside the whole number that `passed` counts. */
  const push = (crest: ExtraCrest, u: number, v: number): number => {
    const away = distance(u - crest.u, v - Math.min(Math.max(v, crest.vFrom), crest.vTo)) / s;
    const fades = 1 - smoothstep(0.5 * reach, 0.95 * reach, away);
    if (fades === 0) return 0;
    const whole = crest.vFrom < v && v <= crest.vTo && u > crest.u ? 1 : 0;
    const turns = turnsRound(u - crest.u, v - crest.vFrom) - turnsRound(u - crest.u, v - crest.vTo);
    return fades * (turns - whole);
  };
  const wander = (u: number, v: number): number =>
    0.55 * noise(u / (6 * s), v / wanderMetres) + 1.9 * noise(u / (25 * s) + 40, v / (3 * wanderMetres));
  return {
    phase: (u, v) =>
      u / s + wander(u, v) + passed(u, v) + near(u, v).reduce((sum, crest) => sum + push(crest, u, v), 0),
    strength: (u, v) => {
      const swell = 0.82 + 0.18 * noise(u / (7 * s) + 90, v / (5 * s));
      const open = near(u, v).reduce((least, { u: at, vFrom, vTo }) => {
        const away = Math.min(distance(u - at, v - vFrom), distance(u - at, v - vTo));
        return Math.min(least, smoothstep(0, 0.7 * s, away));
      }, 1);
      return swell * (0.35 + 0.65 * open);
    },
    gained: (vLeft, vRight) => {
      const between = crests.flatMap(({ u, vFrom, vTo }) => {
        const begins = vLeft < vFrom && vFrom <= vRight ? 1 : 0;
        const ends = vLeft < vTo && vTo <= vRight ? 1 : 0;
        return begins === ends ? [] : [{ at: u, whole: begins - ends }];
      });
      return (u) => between.reduce((sum, { at, whole }) => (u > at ? sum + whole : sum), 0);
    },
  };
};
