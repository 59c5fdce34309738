import { describe, expect, it } from 'vitest';
import type { Mesh } from '../../../../core/geometry/mesh.ts';
import { planeMesh } from '../../../../core/geometry/parts/plane.ts';
import { capsuleMesh, sphereMesh } from '../../../../core/geometry/parts/round.ts';
import { plainBox } from '../../support/closed-meshes.ts';
import { relativeError } from '../../support/errors.ts';
import { enclosedVolume, meshOf, surfaceArea } from '../../support/meshes.ts';

const { widthMetres: w, heightMetres: h, depthMetres: d } = plainBox;

// Volumes and areas: Euclid; the polygon's share of the circle is sin(2 pi/n) n / 2 pi
describe('a box', () => {
  it('has the volume and area of a box (rel 1e-12)', () => {
    const mesh = meshOf(plainBox);
    expect(relativeError(enclosedVolume(mesh), w * h * d)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(surfaceArea(mesh), 2 * (w * h + h * d + d * w))).toBeLessThanOrEqual(1e-12);
  });

  it.each([0.3, 0.7, 1.8])('tapered to %d at the top it has the volume of a frustum (rel 1e-12)', (share) => {
    const volume = (w * d * h * (1 + share + share ** 2)) / 3;
    expect(relativeError(enclosedVolume(meshOf({ ...plainBox, topShare: share })), volume)).toBeLessThanOrEqual(1e-12);
  });

  // Steiner: V = inner + r areas + pi r^2 edges + 4/3 pi r^3
  it.each([0.05, 0.15, 0.3])(
    'with edges rounded by %d m it has the volume and area of Steiner’s formula (1 %)',
    (r) => {
      const [a, b, c] = [w - 2 * r, h - 2 * r, d - 2 * r];
      const [faces, edges] = [2 * (a * b + b * c + c * a), a + b + c];
      const mesh = meshOf({ ...plainBox, roundMetres: r });
      const volume = a * b * c + r * faces + Math.PI * r ** 2 * edges + (4 / 3) * Math.PI * r ** 3;
      const area = faces + 2 * Math.PI * r * edges + 4 * Math.PI * r ** 2;
      expect(relativeError(enclosedVolume(mesh), volume)).toBeLessThanOrEqual(0.01);
      expect(relativeError(surfaceArea(mesh), area)).toBeLessThanOrEqual(0.01);
    },
  );

  it('loses volume to its dimples, more the deeper they are, and never more than they could hold', () => {
    const dimpled = (depthMetres: number) =>
      enclosedVolume(meshOf({ ...plainBox, dimples: { count: 8, radiusMetres: 0.2, depthMetres, seed: 3 } }));
    const [none, shallow, deep] = [dimpled(0), dimpled(0.02), dimpled(0.04)];
    expect(relativeError(none, w * h * d)).toBeLessThanOrEqual(1e-9);
    expect(shallow).toBeLessThan(none);
    expect(deep).toBeLessThan(shallow);
    // a hollow d (1 - x^2)^2 over a circle of radius r holds pi r^2 d / 3
    expect(none - deep).toBeLessThanOrEqual(((8 * Math.PI * 0.2 ** 2 * 0.04) / 3) * 1.05);
  });
});

type Round = readonly [name: string, make: (sides: number) => Mesh, volume: number, area: number];
const [r, t, height] = [0.4, 0.15, 1.2];
const slant = (dr: number) => Math.hypot(height, dr);
const cylinder = (bottom: number, top: number, sides: number): Mesh =>
  meshOf({ kind: 'cylinder', radiusMetres: bottom, topRadiusMetres: top, heightMetres: height, sides });
const rounds: readonly Round[] = [
  ['cylinder', (n) => cylinder(r, r, n), Math.PI * r * r * height, 2 * Math.PI * r * (r + height)],
  [
    'tapered cylinder',
    (n) => cylinder(r, t, n),
    (Math.PI * height * (r * r + r * t + t * t)) / 3,
    Math.PI * (r * r + t * t + (r + t) * slant(r - t)),
  ],
  [
    'cone',
    (n) => meshOf({ kind: 'cone', radiusMetres: r, heightMetres: height, sides: n }),
    (Math.PI * r * r * height) / 3,
    Math.PI * r * (r + slant(r)),
  ],
  ['sphere', (n) => sphereMesh(r, r, n), (4 / 3) * Math.PI * r ** 3, 4 * Math.PI * r * r],
  [
    'capsule',
    (n) => capsuleMesh(r, height, n),
    Math.PI * r * r * (height - 2 * r) + (4 / 3) * Math.PI * r ** 3,
    2 * Math.PI * r * height,
  ],
];

describe.each(rounds)('%s', (_, make, volume, area) => {
  it('approaches its volume and area from below, four times nearer for twice the sides (within 10 %)', () => {
    for (const [size, exact] of [
      [enclosedVolume, volume],
      [surfaceArea, area],
    ] as const) {
      const [coarse, fine, finest] = [16, 32, 64].map((n) => exact - size(make(n))) as [number, number, number];
      expect(finest).toBeGreaterThan(0);
      expect(finest / exact).toBeLessThanOrEqual(0.005);
      expect(Math.abs(coarse / fine - 4)).toBeLessThanOrEqual(0.4);
      expect(Math.abs(fine / finest - 4)).toBeLessThanOrEqual(0.4);
    }
  });
});

describe('the rest', () => {
  it.each([3, 8, 32])('a cylinder of %d sides is an exact prism (rel 1e-12)', (n) => {
    const polygon = (n / 2) * r * r * Math.sin((2 * Math.PI) / n);
    expect(relativeError(enclosedVolume(cylinder(r, r, n)), polygon * height)).toBeLessThanOrEqual(1e-12);
  });
  it('a flattened sphere has the volume of an ellipsoid (0.5 %)', () => {
    expect(relativeError(enclosedVolume(sphereMesh(0.5, 0.2, 64)), (4 / 3) * Math.PI * 0.05)).toBeLessThanOrEqual(
      0.005,
    );
  });
  it('a plane has its area (rel 1e-12)', () => {
    expect(relativeError(surfaceArea(planeMesh(3, 2)), 6)).toBeLessThanOrEqual(1e-12);
  });
});
