import { describe, expect, it } from 'vitest';
import { relativeError } from '../../support/errors.ts';
import { circle, enclosedVolume, meshOf, surfaceArea } from '../../support/meshes.ts';
import { type Points, polygon, rimOf, shoelace } from '../../support/solids.ts';

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
