import { describe, expect, it } from 'vitest';
import { footprintOf } from '../../../app/web/ui/footprint.ts';
import { groundShadows } from '../../../app/web/ui/ground-shadows.ts';
import { stageGeometry } from '../../../app/web/walkaround/stage-geometry.ts';
import type { Subject, Waypoint } from '../../../core/setup/schema/setup.ts';
import { buildStage, type Stage, type StageSubject } from '../../../core/world/stage.ts';

import { subjectOf } from '../../core/support/scenes.ts';
import { placeWith } from './subject-setups.ts';

const block = (id: string, east: number): Subject =>
  subjectOf(id, [{ kind: 'box', widthMetres: 2, depthMetres: 1, heightMetres: 1 }], {
    position: [east, 5, 0],
    finish: { reflectance: [0.1, 0.2, 0.3] },
  });
const { ground } = placeWith(block('any', 0));
const left = block('left', -3);
const right = block('right', 3);
const before = buildStage(ground, [left, right]);
const moved = buildStage(ground, [{ ...left, position: [-4, 5, 0] }, right], undefined, before);
const subjectAt = (stage: Stage, index: number) => stage.subjects[index] as StageSubject;

describe('what is drawn of a stage on which one subject was moved', () => {
  it('keeps the outlines from above of the others', () => {
    expect(footprintOf(subjectAt(moved, 1))).toBe(footprintOf(subjectAt(before, 1)));
    const easts = footprintOf(subjectAt(moved, 0)).map(([east]) => east);
    expect([Math.min(...easts), Math.max(...easts)]).toEqual([-5, -3].map((east) => expect.closeTo(east, 9)));
  });

  it('keeps the shadows of the others under a lamp that stands where it stood', () => {
    const place = { position: [0, 0, 3], aim: [0, 5, 0] } as unknown as Waypoint;
    const [was, now] = [groundShadows(before, place), groundShadows(moved, place)];
    expect(now[1]).toBe(was[1]);
    expect(now[0]?.subject).toBe(subjectAt(moved, 0));
    // similar triangles: a corner 1 m high under a lamp at 3 m throws its shadow half as far again as it is away
    const norths = now[0]?.outlines[0]?.map(([, north]) => north) ?? [];
    expect([Math.min(...norths), Math.max(...norths)]).toEqual([4.5, 5.5 * 1.5].map((n) => expect.closeTo(n, 9)));
    expect(groundShadows(moved, { ...place })[1]).toEqual(was[1]);
  });

  const coloursOf = (stage: Stage): Float32Array => stageGeometry(stage).getAttribute('color').array as Float32Array;

  it('keeps the colours of the triangles, in an attribute of its own', () => {
    expect(coloursOf(moved)).toBe(coloursOf(before));
    expect(stageGeometry(moved).getAttribute('color')).not.toBe(stageGeometry(before).getAttribute('color'));
  });

  it('colours each corner as its finish returns light, anew where a subject was painted', () => {
    const finish = { ...left.finish, reflectance: [0.5, 0.25, 0.125] as [number, number, number] };
    const painted = buildStage(
      ground,
      [
        { ...left, finish },
        { ...right, finish },
      ],
      undefined,
      before,
    );
    expect(painted.finishOfTriangle).toBe(before.finishOfTriangle);
    for (const [stage, colour] of [
      [painted, [0.5, 0.25, 0.125]],
      [before, [0.1, 0.2, 0.3]],
    ] as const) {
      const colours = coloursOf(stage);
      stage.subjectOfTriangle.forEach((subject, t) => {
        if (subject < 0) return;
        const expected = Float32Array.from([...colour, ...colour, ...colour]);
        expect(colours.slice(t * 9, t * 9 + 9)).toEqual(expected);
      });
    }
  });

  it('multiplies with tints, which change the colours by themselves', () => {
    const count = before.finishOfTriangle.length;
    const tints = Float32Array.from({ length: count * 3 }, (_, i) => [0.5, 1, 2][i % 3] as number);
    const colours = coloursOf({ ...before, tints });
    const t = before.subjectOfTriangle.indexOf(0);
    expect([...colours.slice(t * 9, t * 9 + 3)]).toEqual([0.05, 0.2, 0.6].map((v) => expect.closeTo(v, 6)));
    expect(coloursOf(before)).not.toEqual(colours);
  });
});
