import { ShapeUtils, Vector2 } from 'three';
import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { areaOf, counterClockwise, type Point2, triangulate } from '../../../core/geometry/triangulate.ts';
import { circle } from '../support/meshes.ts';

interface Drawing {
  readonly outline: readonly Point2[];
  readonly holes: readonly (readonly Point2[])[];
}

const rectangle = (u: number, v: number, width: number, height: number): Point2[] => [
  [u, v],
  [u + width, v],
  [u + width, v + height],
  [u, v + height],
];
const clockwise = (points: readonly Point2[]) => [...counterClockwise(points)].reverse();
const turned = (points: readonly Point2[], radians: number) =>
  points.map(
    ([u, v]): Point2 => [u * Math.cos(radians) - v * Math.sin(radians), u * Math.sin(radians) + v * Math.cos(radians)],
  );

/** Windows in rows and columns: every sill and jamb lies on a line with others. */
const rows: Drawing = {
  outline: rectangle(0, 0, 10, 7),
  holes: [1, 3, 5].flatMap((v) => [1, 3, 5, 7].map((u) => clockwise(rectangle(u, v, 1, 1)))),
};
const random = seededRandom(20);
const star = (points: number, u: number, v: number, size: number) =>
  Array.from({ length: points }, (_, i): Point2 => {
    const [turn, away] = [(2 * Math.PI * i) / points, size * (0.3 + 0.7 * random())];
    return [u + away * Math.cos(turn), v + away * Math.sin(turn)];
  });

const drawings: readonly (readonly [name: string, drawing: Drawing])[] = [
  ['a square', { outline: rectangle(0, 0, 1, 1), holes: [] }],
  [
    'a square with a point in the middle of each side',
    {
      outline: [
        [0, 0],
        [1, 0],
        [2, 0],
        [2, 1],
        [2, 2],
        [1, 2],
        [0, 2],
        [0, 1],
      ],
      holes: [],
    },
  ],
  [
    'a triangle with nine points along one side',
    { outline: [...Array.from({ length: 11 }, (_, i): Point2 => [i, 0]), [5, 4]], holes: [] },
  ],
  [
    'a comb',
    {
      outline: [
        [0, 0],
        [9, 0],
        ...[8, 6, 4, 2].flatMap((u): Point2[] => [
          [u + 1, 3],
          [u, 3],
          [u, 1],
          [u - 1, 1],
        ]),
        [1, 3],
        [0, 3],
      ],
      holes: [],
    },
  ],
  ['windows in rows', rows],
  [
    'windows in rows, turned by a radian',
    { outline: turned(rows.outline, 1), holes: rows.holes.map((h) => turned(h, 1)) },
  ],
  ['a disc with a round hole in its middle', { outline: circle(40, 3), holes: [clockwise(circle(40, 1))] }],
  ...Array.from({ length: 12 }, (_, k): readonly [string, Drawing] => [
    `star ${k} with holes`,
    {
      outline: star(30 + 5 * k, 0, 0, 10),
      holes: Array.from({ length: k % 5 }, (_, h) =>
        clockwise(star(5 + k, 1.2 * Math.cos(1.3 * h), 1.2 * Math.sin(1.3 * h), 0.6)),
      ),
    },
  ]),
  [
    'a frame between stars',
    {
      outline: circle(64, 20),
      holes: [0, 1, 2, 3, 4, 5, 6].map((k) => clockwise(star(17, 12 * Math.cos(0.9 * k), 12 * Math.sin(0.9 * k), 4))),
    },
  ],
];

describe.each(drawings)('triangulate %s', (_, { outline, holes }) => {
  const points = [...outline, ...holes.flat()];
  const triangles = triangulate(outline, holes);
  const faces = Array.from({ length: triangles.length / 3 }, (_, t) => triangles.slice(3 * t, 3 * t + 3));
  const at = (i: number | undefined) => points[i as number] as Point2;
  const edges = new Map<string, number>();
  for (const face of faces)
    for (const k of [0, 1, 2]) edges.set(`${face[k]}>${face[(k + 1) % 3]}`, face[(k + 2) % 3] as number);

  it('makes n - 2 + 2 h triangles, none inside out', () => {
    expect(faces.length).toBe(points.length - 2 + 2 * holes.length);
    const areas = faces.map((face) => areaOf(face.map(at)));
    // slivers that turning by a radian leaves of lines may have an area of rounding
    expect(Math.min(...areas)).toBeGreaterThan(-1e-12);
  });

  it('covers the outline less its holes, as the shoelace formula has it, and as three’s own triangulation (rel 1e-12)', () => {
    const sum = faces.reduce((area, face) => area + areaOf(face.map(at)), 0);
    const shoelace = [outline, ...holes].reduce((area, loop) => area + areaOf(loop), 0);
    expect(Math.abs(sum / shoelace - 1)).toBeLessThanOrEqual(1e-12);
    const vectors = (loop: readonly Point2[]) => loop.map(([u, v]) => new Vector2(u, v));
    const theirs = ShapeUtils.triangulateShape(vectors(outline), holes.map(vectors));
    const theirArea = theirs.reduce((area, face) => area + Math.abs(areaOf(face.map(at))), 0);
    expect(Math.abs(sum / theirArea - 1)).toBeLessThanOrEqual(1e-12);
  });

  it('uses every edge once each way but the rim, which is the drawing’s: no corner lies on another’s edge', () => {
    expect(edges.size).toBe(triangles.length);
    let first = 0;
    const rim = new Set<string>();
    for (const loop of [outline, ...holes]) {
      for (const k of loop.keys()) rim.add(`${first + k}>${first + ((k + 1) % loop.length)}`);
      first += loop.length;
    }
    const open = [...edges.keys()].filter((edge) => !edges.has(edge.split('>').reverse().join('>')));
    expect(new Set(open)).toEqual(rim);
  });

  it('leaves no pair of neighbours that another diagonal would make better: Delaunay’s empty circle (abs 1e-9)', () => {
    // the determinant that is positive where d lies inside the circle through a, b, c (Guibas and Stolfi 1985)
    const inCircle = (a: Point2, b: Point2, c: Point2, d: Point2) => {
      const row = ([u, v]: Point2) => [u - d[0], v - d[1], (u - d[0]) ** 2 + (v - d[1]) ** 2] as const;
      const [p, q, r] = [row(a), row(b), row(c)];
      const determinant =
        p[0] * (q[1] * r[2] - q[2] * r[1]) - p[1] * (q[0] * r[2] - q[2] * r[0]) + p[2] * (q[0] * r[1] - q[1] * r[0]);
      return determinant / (1 + p[2] * q[2] + q[2] * r[2] + r[2] * p[2]);
    };
    let most = 0;
    for (const [edge, left] of edges) {
      const [from, to] = edge.split('>').map(Number);
      const right = edges.get(`${to}>${from}`);
      if (right !== undefined) most = Math.max(most, inCircle(at(from), at(to), at(left), at(right)));
    }
    expect(most).toBeLessThanOrEqual(1e-9);
  });
});

describe('triangulate of outlines that meet themselves', () => {
  it('still ends, with as many triangles and the rim whole', () => {
    const bow: Point2[] = [
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ];
    expect(triangulate(bow).length).toBe(6);
    expect(triangulate(Array.from({ length: 50 }, (): Point2 => [random(), random()])).length).toBe(3 * 48);
    expect(triangulate(Array.from({ length: 9 }, (_, i): Point2 => [i, 0])).length).toBe(3 * 7);
  });
  it('so too with a hole that lies round the outline, which no corner of it sees', () => {
    const triangles = triangulate(rectangle(4, 4, 1, 1), [clockwise(rectangle(0, 0, 9, 9))]);
    expect(triangles.length).toBe(3 * (8 - 2 + 2));
    expect(new Set(triangles)).toEqual(new Set([0, 1, 2, 3, 4, 5, 6, 7]));
  });
});
