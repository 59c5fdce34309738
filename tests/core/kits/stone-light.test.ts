import { describe, expect, it } from 'vitest';
import { closestHit } from '../../../core/geometry/cast-ray.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { carvedSlab } from '../../../core/kits/carved-slab.ts';
import { chapel } from '../../../core/kits/chapel.ts';
import { drystoneWall } from '../../../core/kits/drystone-wall.ts';
import { hut } from '../../../core/kits/hut.ts';
import { naturalArch } from '../../../core/kits/natural-arch.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { stageWith } from '../support/scenes.ts';
import { kitSubject } from './kit-checks.ts';

const seed = 61_211;
const rays = 20_000;
type Place = [east: number, north: number, up: number];

/** Even over the sphere, document axes: height evenly over [-1, 1] and a turn (Archimedes). */
const directions = (): Place[] => {
  const random = seededRandom(seed);
  return Array.from({ length: rays }, () => {
    const [up, turn] = [random() * 2 - 1, random() * 2 * Math.PI];
    const level = Math.sqrt(1 - up * up);
    return [Math.cos(turn) * level, Math.sin(turn) * level, up];
  });
};

const along = (from: Place, way: Place, t: number): Place => [
  from[0] + way[0] * t,
  from[1] + way[1] * t,
  from[2] + way[2] * t,
];

/** First place that a ray meets, document axes. */
const firstMet = (stage: Stage, from: Place, way: Place): Place | null => {
  const hit = closestHit(stage.tree, worldFromDocument(from), worldFromDocument(way));
  return hit ? along(from, way, hit.t) : null;
};

describe(`hut: ${rays} rays from a lamp inside (seed ${seed})`, () => {
  const typed = {
    widthMetres: 7,
    depthMetres: 5,
    eavesMetres: 2.6,
    doorWidthMetres: 1,
    doorHeightMetres: 2,
    windowWidthMetres: 0.8,
    windowHeightMetres: 0.9,
  };
  const small = {
    ...typed,
    widthMetres: 3,
    depthMetres: 2.5,
    eavesMetres: 1.6,
    pitchDegrees: 60,
    doorWidthMetres: 0.6,
  };
  const large = { ...typed, widthMetres: 20, depthMetres: 12, eavesMetres: 5, pitchDegrees: 15 };

  it.each([
    ['middle', { ...typed, windows: 1 }, [0, 0.5, 1.2]],
    ['middle, two windows', { ...typed, windows: 2 }, [0.3, 1, 0.4]],
    ['under the ridge', { ...typed, windows: 2 }, [0, 0, 3.9]],
    ['close to the eaves', { ...typed, windows: 1 }, [0, 1.2, 2.7]],
    ['in a corner', { ...typed, windows: 1 }, [2.95, 1.95, 0.05]],
    ['a small steep one', { ...small, windows: 1 }, [0, 0.2, 1]],
    ['a large flat one', { ...large, windows: 2 }, [0, 0, 1]],
  ] as const)('they leave by doorway and windows alone, and by the whole of these: %s', (_, values, lamp) => {
    const from: Place = [...lamp];
    const made = kitSubject(hut, values);
    const stage = stageWith(made);
    const [wide, deep] = [values.widthMetres, values.depthMetres];
    const openings = made.parts.flatMap((part) => (part.kind === 'wall' ? part.openings : []));
    expect(openings.length).toBe(values.windows + 1);
    const wall = made.parts.find((part) => part.name === 'Front wall');
    const thick = wall?.kind === 'wall' ? wall.thicknessMetres : 0;
    /** Whether a ray passes an opening, drawn in by a margin on all sides, on both faces of the front wall. */
    const passes = (way: Place, margin: number) =>
      way[1] < 0 &&
      openings.some(({ acrossMetres, sillMetres, widthMetres, heightMetres }) =>
        [-deep / 2, thick - deep / 2].every((plane) => {
          const [east, , up] = along(from, way, (plane - from[1]) / way[1]);
          return (
            Math.abs(east - acrossMetres) <= widthMetres / 2 - margin &&
            up >= sillMetres + margin &&
            up <= sillMetres + heightMetres - margin
          );
        }),
      );
    let [out, through] = [0, 0];
    for (const way of directions()) {
      const met = firstMet(stage, from, way);
      const isIn = met !== null && Math.abs(met[0]) <= wide / 2 + 1e-3 && Math.abs(met[1]) <= deep / 2 + 1e-3;
      if (!isIn) {
        out++;
        // 1 mm for the stand back of the front wall
        expect(passes(way, -3e-3), `${way} meets ${met}`).toBe(true);
      }
      // sills and lintels stand out by up to 5 cm
      if (passes(way, 0.06)) {
        through++;
        expect(isIn, `${way} meets ${met}`).toBe(false);
      }
    }
    expect(out).toBeGreaterThan(5);
    expect(out).toBeGreaterThanOrEqual(through);
  });
});

describe('drystone wall', () => {
  it.each([
    [6, 1.4, 0.5, 1],
    [10.8, 1.4, 0.5, 1],
    [4, 0.9, 0.35, 2],
    [3, 1.6, 1, 0],
  ])(
    `lets none of ${rays} slanting rays through under its cope: %d × %d × %d m (seed ${seed})`,
    (length, height, thick, cope) => {
      const values = { lengthMetres: length, heightMetres: height, thicknessMetres: thick, cope };
      const stage = stageWith(kitSubject(drystoneWall, values, 3));
      const random = seededRandom(seed);
      const open = [0.06, 0.16, 0.08][cope] ?? 0;
      for (let k = 0; k < rays; k++) {
        const middle: Place = [(random() - 0.5) * (length - 2 * 0.3), 0, 0.01 + random() * (height - open - 0.01)];
        const [slant, rise] = [(random() - 0.5) * 2, (random() - 0.5) * 0.4];
        // the ray passes the middle of the wall at the place drawn, and both faces under the cope
        const way: Place = [slant, 1, rise];
        const highest = middle[2] + (thick / 2) * Math.abs(rise);
        if (highest > height - open) continue;
        const met = firstMet(stage, along(middle, way, -2), way);
        const isGround = met && met[2] < 1e-6;
        expect(met !== null && (isGround || Math.abs(met[1]) <= thick / 2 + 1e-3), `${middle} ${way}`).toBe(true);
      }
    },
  );

  it('scene S1 of the trade notes: light from 0.5 m out of the face and 2 m past the end shades much of it, light from the camera little', () => {
    const stage = stageWith(kitSubject(drystoneWall, { lengthMetres: 10.8 }, 3));
    const random = seededRandom(seed);
    const shaded = (lamp: Place) => {
      let [count, dark] = [0, 0];
      for (let k = 0; k < 4000; k++) {
        const from: Place = [(random() - 0.5) * 4, -4, 0.15 + random() * 0.9];
        const face = firstMet(stage, from, [0, 1, 0]);
        if (!face) continue;
        count++;
        const way: Place = [face[0] - lamp[0], face[1] - lamp[1], face[2] - lamp[2]];
        const met = firstMet(stage, lamp, way);
        if (met && Math.hypot(met[0] - face[0], met[1] - face[1], met[2] - face[2]) > 1e-3) dark++;
      }
      return dark / count;
    };
    const [front, raking] = [shaded([0, -8, 1.5]), shaded([-7.4, -0.75, 1.5])];
    expect(front).toBeLessThan(0.1);
    expect(raking).toBeGreaterThan(0.2);
    expect(raking).toBeGreaterThan(4 * front);
  });
});

describe('carved slab', () => {
  it('its face lies at 0, and the ground of its cuts 6 mm and 3 mm deep, and nothing else', () => {
    const stage = stageWith(kitSubject(carvedSlab, {}, 2));
    const random = seededRandom(seed);
    const counts = new Map<number, number>();
    for (let k = 0; k < rays; k++) {
      const from: Place = [(random() - 0.5) * 1.15, -3, 0.02 + random() * 1.98];
      const met = firstMet(stage, from, [0, 1, 0]);
      const depthMm = ((met?.[1] ?? Number.NaN) + 0.125) * 1000;
      const whole = Math.round(depthMm);
      // 32-bit corners and short numbers in the document
      expect(Math.abs(depthMm - whole), `${from}`).toBeLessThan(0.02);
      counts.set(whole, (counts.get(whole) ?? 0) + 1);
    }
    // up to 0.5 mm may be rounding, but depths are those that were typed
    expect([...counts.keys()].sort((a, b) => a - b)).toEqual([0, 3, 6]);
    expect(counts.get(6)).toBeGreaterThan(0.04 * rays);
    expect(counts.get(3)).toBeGreaterThan(0.004 * rays);
  });
});

describe('roofless chapel', () => {
  it('light from inside leaves by the lancets of the front, whose middles lie open', () => {
    const made = kitSubject(chapel, {}, 3);
    const stage = stageWith(made);
    const front = made.parts.find((part) => part.name === 'Front wall');
    const holes = front?.kind === 'prism' ? front.holes : [];
    expect(holes.length).toBe(2);
    for (const hole of holes) {
      const east = hole.reduce((sum, p) => sum + p[0], 0) / hole.length;
      for (const up of [1, 1.5, 2.2, 2.7])
        for (const across of [-0.2, 0, 0.2]) {
          // near its point an equilateral arch 0.5 m wide is narrower
          if (up > 2.5 && across !== 0) continue;
          const met = firstMet(stage, [east + across, -1.5, up], [0, -1, 0]);
          expect(met === null || met[1] < -4, `${east + across}, ${up}: ${met}`).toBe(true);
          // and beside it the wall is closed
          expect(firstMet(stage, [east + across + 0.5, -1.5, up], [0, -1, 0])?.[1]).toBeGreaterThan(-3.01);
        }
    }
  });

  it('the sky stands open over the floor', () => {
    const stage = stageWith(kitSubject(chapel, {}, 3));
    for (const east of [-3, 0, 3]) expect(firstMet(stage, [east, 0, 2], [0, 0, 1])).toBeNull();
  });
});

describe('natural arch', () => {
  it('one sees through its opening, and not through its legs or top (scene S6: outer radius 11 m, tube 2.5 m)', () => {
    const stage = stageWith(kitSubject(naturalArch, { topMetres: 5 }, 3));
    const through = (east: number, up: number) => firstMet(stage, [east, -40, up], [0, 1, 0]) === null;
    for (const east of [-4, 0, 4]) for (const up of [2, 3]) expect(through(east, up), `${east}, ${up}`).toBe(true);
    for (const side of [-1, 1]) for (const up of [0.2, 1, 3]) expect(through(side * 8.5, up)).toBe(false);
    expect(through(0, 8.5)).toBe(false);
    expect(through(0, 11.1)).toBe(true);
  });
});
