import { describe, expect, it } from 'vitest';
import type { Mesh } from '../../../../core/geometry/mesh.ts';
import { relativeError } from '../../support/errors.ts';
import { circle, enclosedVolume, meshOf, surfaceArea } from '../../support/meshes.ts';
import { expectSecondOrder, integral, type Points, polygon, shoelace } from '../../support/solids.ts';

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
