import { describe, expect, it } from 'vitest';
import { closestHit } from '../../../core/geometry/cast-ray.ts';
import { boat } from '../../../core/kits/boat.ts';
import type { KitValues } from '../../../core/kits/kit.ts';
import type { PartOf, Subject } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { partMesh } from '../../../core/world/part-mesh.ts';
import { relativeError } from '../support/errors.ts';
import { enclosedVolume } from '../support/meshes.ts';
import { stageWith } from '../support/scenes.ts';
import { boundsOf, cornersOf, kitSubject, sizeOf } from './kit-checks.ts';

/** Scene S5 of the trade notes: 6.5 m long, 2.2 m wide, 1.1 m deep, heeled by 18°, 12 plank lines as steps of 8 mm. */
const upright = (values: KitValues = {}) => kitSubject(boat, { heelDegrees: 0, ...values });
const planking = (subject: Subject) => {
  const part = subject.parts.find(({ name }) => name === 'Planking');
  if (part?.kind !== 'loft') throw new Error('no planking');
  return part;
};
type Section = PartOf<'loft'>['sections'][number];

/** Area of a closed outline by the shoelace formula. */
const areaOf = (points: Section['outline']) =>
  Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [nx, ny] = points[(i + 1) % points.length] as [number, number];
      return sum + (x * ny - nx * y) / 2;
    }, 0),
  );

/** The outside of a section of planking: from one gunwale under the keel to the other, without the way back. */
const outside = ({ outline }: Section): Section['outline'] => {
  // the way back begins at the first point after the far gunwale, level with it and farther in
  const far = outline.findIndex(([east], i) => i > 0 && Math.abs(east + (outline[0] as [number, number])[0]) < 1e-4);
  return outline.slice(0, far + 1);
};
const axesOf = (points: Section['outline']) => {
  const [easts, ups] = [points.map(([e]) => e), points.map(([, u]) => u)];
  return { beam: Math.max(...easts) - Math.min(...easts), depth: Math.max(...ups) - Math.min(...ups) };
};

describe('boat', () => {
  it.each([
    [6.5, 2.2, 1.1],
    [3.1, 1.25, 0.5],
    [11.4, 3.6, 1.8],
  ])('%d m long, %d m wide, %d m deep from the gunwale amidships to the planking’s underside (1 mm)', (l, b, d) => {
    const made = upright({ lengthMetres: l, beamMetres: b, depthMetres: d });
    const [wide, long] = sizeOf(made);
    expect(Math.abs(wide - b)).toBeLessThanOrEqual(1e-3);
    expect(Math.abs(long - l)).toBeLessThanOrEqual(1e-3);
    const { sections } = planking(made);
    const middle = sections.reduce((best, s) => (Math.abs(s.northMetres) < Math.abs(best.northMetres) ? s : best));
    const { beam, depth } = axesOf(outside(middle));
    expect(Math.abs(beam - b)).toBeLessThanOrEqual(1e-3);
    expect(Math.abs(depth - d)).toBeLessThanOrEqual(1e-3);
  });

  // an inscribed half ellipse of n equal turns has sin(pi / n) / (pi / n) of pi b d / 4 (regular polygon, stretched)
  it('smooth ribs have the area of a half ellipse, pi b d / 4, less the facets (rel 1e-3)', () => {
    const { sections } = planking(upright({ planks: 0 }));
    expect(sections.length).toBeGreaterThanOrEqual(7);
    let worst = 0;
    for (const section of sections) {
      const rim = outside(section);
      const { beam, depth } = axesOf(rim);
      const turns = rim.length - 1;
      const facets = Math.sin(Math.PI / turns) / (Math.PI / turns);
      worst = Math.max(worst, relativeError(areaOf(rim), (facets * Math.PI * beam * depth) / 4));
    }
    expect(worst).toBeLessThanOrEqual(1e-3);
  });

  it('planks step in by 8 mm amidships, twelve lines a side, and never stand out over the ellipse', () => {
    const { sections } = planking(upright());
    const middle = sections.reduce((best, s) => (Math.abs(s.northMetres) < Math.abs(best.northMetres) ? s : best));
    const rim = outside(middle);
    const { beam, depth } = axesOf(rim);
    const top = Math.max(...rim.map(([, up]) => up));
    const steps = rim.slice(1).filter(([e, u], i) => {
      const [pe, pu] = rim[i] as [number, number];
      return Math.abs(Math.hypot(e - pe, u - pu) - 0.008) < 2e-4;
    });
    // 12 planks a side join along 11 lines
    expect(steps.length).toBe(22);
    for (const [e, u] of rim)
      expect((2 * e) ** 2 / beam ** 2 + (top - u) ** 2 / depth ** 2).toBeLessThanOrEqual(1 + 1e-4);
  });

  it('the shell holds the wood between two hulls of half ellipses (rel 3e-3)', () => {
    const made = upright({ planks: 0 });
    const { sections } = planking(made);
    // width and depth change evenly from rib to rib, so Simpson's rule on pi b d / 4 is exact in between
    const hull = (rimOf: (section: Section) => Section['outline']) => {
      let volume = 0;
      for (let k = 1; k < sections.length; k++) {
        const [a, b] = [sections[k - 1], sections[k]] as [Section, Section];
        const [one, two] = [axesOf(rimOf(a)), axesOf(rimOf(b))];
        const turns = rimOf(a).length - 1;
        const facets = Math.sin(Math.PI / turns) / (Math.PI / turns);
        const middle = ((one.beam + two.beam) / 2) * ((one.depth + two.depth) / 2);
        const sum = one.beam * one.depth + 4 * middle + two.beam * two.depth;
        volume += (((facets * Math.PI) / 4) * sum * (b.northMetres - a.northMetres)) / 6;
      }
      return volume;
    };
    const wood = hull(outside) - hull((section) => section.outline.slice(outside(section).length));
    expect(relativeError(enclosedVolume(partMesh(made, planking(made))), wood)).toBeLessThanOrEqual(3e-3);
  });

  it('is open above on its keel: rays straight down into it first meet thwarts, ribs or planking well under the rails', () => {
    const made = upright();
    const { tree } = stageWith(made);
    const thwarts = boundsOf(made, 'Thwart').high[2];
    const hits = [-0.6, -0.3, 0, 0.3, 0.6].flatMap((east) =>
      [-1.9, -1.2, -0.5, 0.1, 0.8, 1.5, 2].map((north) => {
        const hit = closestHit(tree, worldFromDocument([east, north, 5]), [0, -1, 0]);
        return 5 - (hit?.t ?? 0);
      }),
    );
    expect(Math.max(...hits)).toBeLessThanOrEqual(thwarts + 1e-3);
    expect(thwarts).toBeLessThan(1.1 - 0.15);
    // and they see the bottom, a plank over the ground
    expect(Math.min(...hits)).toBeLessThan(0.2);
  });

  it('leans by 18°, and rests on the ground in every lie', () => {
    const leaning = kitSubject(boat);
    const rail = (subject: Subject, name: string) => {
      const corners = cornersOf(subject, (each) => each === name).filter(
        ([, north]) => Math.abs(north as number) < 0.4,
      );
      const mean = (axis: 0 | 2) => corners.reduce((sum, corner) => sum + (corner[axis] as number), 0) / corners.length;
      return [mean(0), mean(2)] as const;
    };
    const [west, east] = [rail(leaning, 'West rail'), rail(leaning, 'East rail')];
    const slope = (Math.atan2(west[1] - east[1], east[0] - west[0]) * 180) / Math.PI;
    expect(Math.abs(slope - 18)).toBeLessThanOrEqual(0.01);
    for (const lies of [0, 1])
      for (const heelDegrees of [-30, 0, 18, 30]) {
        const hull = boundsOf(
          kitSubject(boat, { lies, heelDegrees }),
          'Planking',
          'Keel',
          'Stem',
          'Stern post',
          'East rail',
          'West rail',
        );
        expect(Math.abs(hull.low[2] + 0.02)).toBeLessThanOrEqual(1e-3);
      }
  });
});
