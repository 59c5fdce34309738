import { describe, expect, it } from 'vitest';
import { closestHit } from '../../../core/geometry/cast-ray.ts';
import { buildRayTree } from '../../../core/geometry/ray-tree.ts';
import { relief as reliefSchema } from '../../../core/setup/schema/ground.ts';
import { reliefMesh } from '../../../core/world/ground-mesh.ts';

/** Height under a place east and north, metres. */
const heightsOf = (given: object) => {
  const tree = buildRayTree(reliefMesh(reliefSchema.parse(given)).positions);
  return (east: number, north: number): number => {
    const hit = closestHit(tree, [east, 10, -north], [0, -1, 0]);
    return hit ? 10 - hit.t : 0;
  };
};

/** Mean size of the change in height over so far along a bearing, and across it. */
const roughness = (height: (east: number, north: number) => number, bearingDegrees: number, far: number) => {
  const turn = (bearingDegrees * Math.PI) / 180;
  const [e, n] = [Math.sin(turn), Math.cos(turn)];
  let [along, across] = [0, 0];
  for (let i = 0; i < 400; i++) {
    const [east, north] = [
      20 + 2 * Math.cos(i * 2.4) * Math.sqrt(i / 400),
      30 + 2 * Math.sin(i * 2.4) * Math.sqrt(i / 400),
    ];
    along += Math.abs(height(east + far * e, north + far * n) - height(east, north));
    across += Math.abs(height(east + far * n, north - far * e) - height(east, north));
  }
  return { along, across };
};

const at = { centre: [20, 30], radiusMetres: 4, seed: 3 };

describe('reliefMesh', () => {
  it.each([0, 60, 135, 350])('ripples change along their bearing of %d°, hardly across it', (bearingDegrees) => {
    const height = heightsOf({ kind: 'ripples', heightMetres: 0.02, spacingMetres: 0.3, bearingDegrees, ...at });
    const { along, across } = roughness(height, bearingDegrees, 0.12);
    expect(along).toBeGreaterThan(2.5 * across);
  });

  it.each([0, 60, 135])('the steep side of ripples lies toward their bearing of %d°', (bearingDegrees) => {
    const height = heightsOf({ kind: 'ripples', heightMetres: 0.02, spacingMetres: 0.3, bearingDegrees, ...at });
    const turn = (bearingDegrees * Math.PI) / 180;
    let [rising, falling] = [0, 0];
    for (let d = -2; d < 2; d += 0.01) {
      const h = (x: number) => height(20 + x * Math.sin(turn), 30 + x * Math.cos(turn));
      if (h(d + 0.01) > h(d)) rising++;
      else falling++;
    }
    expect(rising).toBeGreaterThan(1.4 * falling);
  });

  it('drifts lie along their bearing: they change less along it than across', () => {
    const height = heightsOf({ kind: 'drifts', heightMetres: 0.3, spacingMetres: 1, bearingDegrees: 60, ...at });
    const { along, across } = roughness(height, 60, 0.3);
    expect(across).toBeGreaterThan(1.3 * along);
  });

  it('lies round its centre, nowhere else', () => {
    for (const kind of ['ripples', 'drifts', 'pool']) {
      const height = heightsOf({ kind, heightMetres: 0.05, ...at });
      expect(height(20.1, 30.1)).toBeGreaterThan(0);
      expect(height(20, 35)).toBe(0);
      expect(height(-20, 30)).toBe(0);
    }
  });

  it('a pool without waves is level to a micrometre and a few millimetres high', () => {
    const height = heightsOf({ kind: 'pool', heightMetres: 0, ...at });
    expect(height(20, 30)).toBeGreaterThan(0.001);
    expect(height(20, 30)).toBeLessThan(0.006);
    expect(Math.abs(height(21.5, 31) - height(20, 30))).toBeLessThan(1e-6);
  });

  it('is made once for the same entry of the document', () => {
    const relief = reliefSchema.parse({ kind: 'drifts' });
    expect(reliefMesh(relief)).toBe(reliefMesh(relief));
    expect(reliefMesh({ ...relief })).not.toBe(reliefMesh(relief));
  });
});
