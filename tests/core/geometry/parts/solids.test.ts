import { describe, expect, it } from 'vitest';
import type { Mesh } from '../../../../core/geometry/mesh.ts';
import { relativeError } from '../../support/errors.ts';
import { circle, enclosedVolume, meshOf, surfaceArea } from '../../support/meshes.ts';

type Points = [number, number][];

/** Area of a regular polygon over the square of its circle's radius: what finite sides leave of pi. */
const polygon = (sides: number) => (sides / 2) * Math.sin((2 * Math.PI) / sides);

const shoelace = (points: Points) =>
  Math.abs(
    points.reduce((sum, [u, v], i) => {
      const [nextU, nextV] = points[(i + 1) % points.length] as [number, number];
      return sum + u * nextV - v * nextU;
    }, 0) / 2,
  );
const rimOf = (points: Points) =>
  points.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = points[(i + 1) % points.length] as [number, number];
    return sum + Math.hypot(nextU - u, nextV - v);
  }, 0);

/** Gauss and Legendre's rule with five points on each of many pieces (Abramowitz and Stegun, table 25.4). */
const integral = (f: (x: number) => number, from: number, to: number): number => {
  const [inner, outer] = [0.5384693101056831, 0.906179845938664];
  const rule = [
    [0, 0.5688888888888889],
    [inner, 0.47862867049936647],
    [-inner, 0.47862867049936647],
    [outer, 0.23692688505618908],
    [-outer, 0.23692688505618908],
  ] as const;
  const step = (to - from) / 64;
  return Array.from({ length: 64 }, (_, k) =>
    rule.reduce((sum, [x, w]) => sum + (w * step * f(from + step * (k + 0.5 + x / 2))) / 2, 0),
  ).reduce((sum, v) => sum + v, 0);
};

/** Holds a measure to its limit: it nears it four times as much for twice the sides (within a tenth), from below. */
const expectSecondOrder = (make: (sides: number) => Mesh, measure: (mesh: Mesh) => number, exact: number) => {
  const [coarse, fine, finest] = [16, 32, 64].map((n) => exact - measure(make(n))) as [number, number, number];
  expect(finest).toBeGreaterThan(0);
  expect(finest / exact).toBeLessThanOrEqual(0.005);
  expect(Math.abs(coarse / fine - 4)).toBeLessThanOrEqual(0.4);
  expect(Math.abs(fine / finest - 4)).toBeLessThanOrEqual(0.4);
};

// Euclid XI and XII: prisms and pyramids
describe('a wedge', () => {
  it.each([0, 0.3, 0.5, 1])(
    'with its ridge at %d of the depth has half its block’s volume, and its faces’ areas (rel 1e-12)',
    (ridgeShare) => {
      const [w, d, h] = [2.2, 3.1, 1.4];
      const mesh = meshOf({ kind: 'wedge', widthMetres: w, depthMetres: d, heightMetres: h, ridgeShare });
      expect(relativeError(enclosedVolume(mesh), (w * d * h) / 2)).toBeLessThanOrEqual(1e-12);
      const slopes = Math.hypot(h, ridgeShare * d) + Math.hypot(h, (1 - ridgeShare) * d);
      expect(relativeError(surfaceArea(mesh), w * d + d * h + w * slopes)).toBeLessThanOrEqual(1e-12);
    },
  );
});

describe('a tapered post of few sides', () => {
  it.each([3, 7, 8, 32])('of %d sides has the volume of a pyramid’s frustum (Heron; rel 1e-12)', (sides) => {
    const [r, t, h] = [0.7, 0.3, 2];
    const mesh = meshOf({ kind: 'cylinder', radiusMetres: r, topRadiusMetres: t, heightMetres: h, sides });
    const [foot, top] = [polygon(sides) * r * r, polygon(sides) * t * t];
    expect(relativeError(enclosedVolume(mesh), (h / 3) * (foot + top + Math.sqrt(foot * top)))).toBeLessThanOrEqual(
      1e-12,
    );
  });
});

describe('a prism', () => {
  const ell: Points = [
    [0, 0],
    [2, 0],
    [2, 1],
    [1, 1],
    [1, 2],
    [0, 2],
  ];
  const hole: Points = [
    [0.2, 0.2],
    [0.7, 0.3],
    [0.4, 0.8],
  ];

  it('has its outline’s area times its height, and the areas of lids and sides (shoelace formula; rel 1e-12)', () => {
    const mesh = meshOf({ kind: 'prism', outline: ell, holes: [hole], heightMetres: 0.7 });
    const area = shoelace(ell) - shoelace(hole);
    expect(relativeError(enclosedVolume(mesh), area * 0.7)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(surfaceArea(mesh), 2 * area + 0.7 * (rimOf(ell) + rimOf(hole)))).toBeLessThanOrEqual(1e-12);
  });

  it('over a round outline with a round hole is a tube of polygons (rel 1e-12)', () => {
    const mesh = meshOf({ kind: 'prism', outline: circle(48, 2), holes: [circle(24, 0.5)], heightMetres: 1.5 });
    expect(relativeError(enclosedVolume(mesh), 1.5 * (polygon(48) * 4 - polygon(24) * 0.25))).toBeLessThanOrEqual(
      1e-12,
    );
  });
});

describe('an egg', () => {
  const [a, b, c] = [0.7, 0.4, 1.1];
  const egg = (sides: number) =>
    meshOf({ kind: 'sphere', radiusMetres: a, radiusNorthMetres: b, heightMetres: 2 * c, sides });

  it('approaches the volume of an ellipsoid, 4/3 pi a b c', () => {
    expectSecondOrder(egg, enclosedVolume, (4 / 3) * Math.PI * a * b * c);
  });

  it('has the area of an ellipsoid by Knud Thomsen’s formula, which is true within 1.061 %', () => {
    const p = 1.6075;
    const thomsen = 4 * Math.PI * (((a * b) ** p + (a * c) ** p + (b * c) ** p) / 3) ** (1 / p);
    expect(relativeError(surfaceArea(egg(128)), thomsen)).toBeLessThanOrEqual(0.01061 + 0.001);
  });

  it('stretched upward alone approaches the area of a prolate spheroid, 2 pi a^2 (1 + c / (a e) asin e)', () => {
    const e = Math.sqrt(1 - (a * a) / (c * c));
    expectSecondOrder(
      (sides) => meshOf({ kind: 'sphere', radiusMetres: a, heightMetres: 2 * c, sides }),
      surfaceArea,
      2 * Math.PI * a * a * (1 + (c / (a * e)) * Math.asin(e)),
    );
  });
});

// Pappus: a figure turned about an axis sweeps its area times the way of its centroid, and its rim likewise
describe('a ring', () => {
  const [radius, tube] = [2, 0.4];
  const ring = (arcDegrees: number, sides: number) =>
    meshOf({ kind: 'ring', radiusMetres: radius, tubeRadiusMetres: tube, arcDegrees, sides });

  it('whole, of 32 sides and 64 pieces, has the volume of wedges of the polygon’s tube (rel 1e-12)', () => {
    // a wedge between planes at an angle, straight from the one section to the other, holds section x R sin(angle)
    const exact = 64 * polygon(32) * tube * tube * radius * Math.sin((2 * Math.PI) / 64);
    expect(relativeError(enclosedVolume(ring(360, 32)), exact)).toBeLessThanOrEqual(1e-12);
  });

  it.each([360, 180, 77])('of %d degrees approaches the volume and area that Pappus gives', (arcDegrees) => {
    const way = (radius * arcDegrees * Math.PI) / 180;
    const lids = arcDegrees < 360 ? 2 * Math.PI * tube * tube : 0;
    expect(relativeError(enclosedVolume(ring(arcDegrees, 128)), Math.PI * tube * tube * way)).toBeLessThanOrEqual(
      0.005,
    );
    expect(relativeError(surfaceArea(ring(arcDegrees, 128)), 2 * Math.PI * tube * way + lids)).toBeLessThanOrEqual(
      0.005,
    );
    const coarse = relativeError(enclosedVolume(ring(arcDegrees, 16)), Math.PI * tube * tube * way);
    expect(coarse).toBeGreaterThan(0.01);
  });

  it('that thins toward its top holds pi R times the integral of the tube’s radius squared (Pappus slice by slice; 0.5 %)', () => {
    const topShare = 0.4;
    const mesh = meshOf({ kind: 'ring', radiusMetres: radius, tubeRadiusMetres: tube, topShare, sides: 128 });
    const at = (turn: number) => tube * (topShare + (1 - topShare) * Math.sin(turn) ** 2);
    const exact = Math.PI * radius * integral((turn) => at(turn) ** 2, -Math.PI / 2, Math.PI / 2);
    expect(relativeError(enclosedVolume(mesh), exact)).toBeLessThanOrEqual(0.005);
  });

  it('stands with the middles of its ends at height 0 and its top where radius and tube add up (abs 1e-12)', () => {
    const highest = (mesh: Mesh) => mesh.positions.reduce((top, v, i) => (i % 3 === 1 ? Math.max(top, v) : top), 0);
    expect(Math.abs(highest(ring(180, 32)) - (radius + tube))).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(highest(ring(360, 32)) - 2 * (radius + tube))).toBeLessThanOrEqual(1e-12);
    // a quarter of a ring rises by R (1 - cos 45 degrees)
    expect(Math.abs(highest(ring(90, 32)) - (radius * (1 - Math.SQRT1_2) + tube))).toBeLessThanOrEqual(1e-12);
  });
});

describe('a turned shape', () => {
  const rim: Points = [
    [0.8, 0.1],
    [1.2, 0],
    [1.4, 0.7],
    [0.9, 0.9],
  ];

  it.each([3, 12, 64])(
    'of %d sides about a closed profile sweeps its area times its centroid’s way, less what the polygon leaves (Pappus; rel 1e-12)',
    (sides) => {
      const mesh = meshOf({ kind: 'turned', profile: rim, closed: true, sides });
      const area = shoelace(rim);
      // centroid of a polygon (Bourke 1988)
      const moment = rim.reduce((sum, [u, v], i) => {
        const [nextU, nextV] = rim[(i + 1) % rim.length] as [number, number];
        return sum + (u + nextU) * (u * nextV - nextU * v);
      }, 0);
      const centroid = Math.abs(moment) / 6 / area;
      // every level section lies between two regular polygons, so the share is the polygon’s of the circle
      const exact = 2 * Math.PI * centroid * area * (polygon(sides) / Math.PI);
      expect(relativeError(enclosedVolume(mesh), exact)).toBeLessThanOrEqual(1e-12);
    },
  );

  it('approaches the area that Pappus gives: each stretch’s length times the way of its middle', () => {
    const exact = rim.reduce((sum, [u, v], i) => {
      const [nextU, nextV] = rim[(i + 1) % rim.length] as [number, number];
      return sum + Math.PI * (u + nextU) * Math.hypot(nextU - u, nextV - v);
    }, 0);
    expectSecondOrder((sides) => meshOf({ kind: 'turned', profile: rim, closed: true, sides }), surfaceArea, exact);
  });

  it('open from the axis to off it gets a lid there: a bowl turned upside down is a cone (rel 1e-12)', () => {
    const mesh = meshOf({
      kind: 'turned',
      profile: [
        [0, 0],
        [0.5, 1],
      ],
      sides: 24,
    });
    expect(relativeError(enclosedVolume(mesh), (polygon(24) * 0.25) / 3)).toBeLessThanOrEqual(1e-12);
  });

  it('is the same drawn from the foot or from the top', () => {
    const profile: Points = [
      [0.4, 0],
      [0.6, 0.5],
      [0.2, 0.9],
    ];
    const [up, down] = [profile, [...profile].reverse()].map((p) => meshOf({ kind: 'turned', profile: p }));
    expect(enclosedVolume(up as Mesh)).toBeCloseTo(enclosedVolume(down as Mesh), 12);
    expect(enclosedVolume(down as Mesh)).toBeGreaterThan(0);
  });
});

describe('a loft', () => {
  const half = (north: number) => 0.3 + north * (2 - north);
  const sections = Array.from({ length: 21 }, (_, s) => {
    const northMetres = s / 10;
    return {
      northMetres,
      outline: circle(32, 1).map(([u, v]): [number, number] => [
        u * half(northMetres),
        1 + 0.5 * v * half(northMetres),
      ]),
    };
  });

  it('of similar sections is a row of frusta (Heron; rel 1e-12)', () => {
    const areas = sections.map(({ outline }) => shoelace(outline));
    const exact = areas.slice(1).reduce((sum, area, s) => {
      const south = areas[s] as number;
      return sum + (0.1 / 3) * (south + area + Math.sqrt(south * area));
    }, 0);
    expect(relativeError(enclosedVolume(meshOf({ kind: 'loft', sections })), exact)).toBeLessThanOrEqual(1e-12);
  });

  it('holds the integral of its sections’ areas (half axes h and h / 2: pi h^2 / 2; polygon’s share; 0.5 %)', () => {
    const exact = integral((north) => (polygon(32) * half(north) ** 2) / 2, 0, 2);
    expect(relativeError(enclosedVolume(meshOf({ kind: 'loft', sections })), exact)).toBeLessThanOrEqual(0.005);
  });
});

describe('a wall', () => {
  const [w, t, h, gable] = [10, 0.7, 4, 3.5];
  const wall = { kind: 'wall', widthMetres: w, thicknessMetres: t, heightMetres: h } as const;
  const opening = { acrossMetres: 0, sillMetres: 1, widthMetres: 1.2, heightMetres: 2.2 } as const;
  /** Half a regular polygon of 48 sides over the opening’s width. */
  const roundHead = (polygon(48) / 2) * (opening.widthMetres / 2) ** 2;
  /** Two sectors of 60 degrees, twelve chords each, that share the triangle over the springing. */
  const pointedHead = opening.widthMetres ** 2 * (2 * (polygon(72) / 6) - Math.sqrt(3) / 4);
  const spring = { flat: 2.2, round: 2.2 - 0.6, pointed: 2.2 - 1.2 * (Math.sqrt(3) / 2) };

  it('without openings is a block, with a gable a house’s end (rel 1e-12)', () => {
    expect(relativeError(enclosedVolume(meshOf(wall)), w * t * h)).toBeLessThanOrEqual(1e-12);
    const gabled = meshOf({ ...wall, gableMetres: gable });
    expect(relativeError(enclosedVolume(gabled), t * (w * h + (w * gable) / 2))).toBeLessThanOrEqual(1e-12);
    const rim = w + 2 * h + 2 * Math.hypot(w / 2, gable);
    expect(relativeError(surfaceArea(gabled), 2 * (w * h + (w * gable) / 2) + t * rim)).toBeLessThanOrEqual(1e-12);
  });

  it.each([
    ['flat', 0],
    ['round', roundHead],
    ['pointed', pointedHead],
  ] as const)('loses to a window with a %s head its area through the thickness (rel 1e-12)', (head, over) => {
    const lost = opening.widthMetres * spring[head] + over;
    const volume = enclosedVolume(meshOf({ ...wall, openings: [{ ...opening, head }] }));
    expect(relativeError(volume, t * (w * h - lost))).toBeLessThanOrEqual(1e-12);
    const door = enclosedVolume(meshOf({ ...wall, openings: [{ ...opening, sillMetres: 0, head }] }));
    expect(relativeError(door, t * (w * h - lost))).toBeLessThanOrEqual(1e-12);
  });

  it('has heads within 0.3 % of the half circle and of the equilateral pointed arch, w^2 (pi / 3 - sqrt 3 / 4)', () => {
    expect(relativeError(roundHead, (Math.PI / 8) * opening.widthMetres ** 2)).toBeLessThanOrEqual(0.003);
    const arch = opening.widthMetres ** 2 * (Math.PI / 3 - Math.sqrt(3) / 4);
    expect(relativeError(pointedHead, arch)).toBeLessThanOrEqual(0.003);
  });

  it('has a doorway’s area less in its foot, and jambs and head more (rel 1e-12)', () => {
    const mesh = meshOf({ ...wall, openings: [{ ...opening, sillMetres: 0, head: 'flat' }] });
    const faces = 2 * (w * h - 1.2 * 2.2);
    expect(relativeError(surfaceArea(mesh), faces + t * (2 * w + 2 * h + 2 * 2.2))).toBeLessThanOrEqual(1e-12);
  });
});
