import { describe, expect, it } from 'vitest';
import type { Line } from '../../../app/web/workers/marks-messages.ts';
import { schemeMarks } from '../../../app/web/workers/scheme-marks.ts';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

/** A post 0.6 m thick and 1.2 m high 6 m in front of the camera, a lamp 3 m up on its left. */
const lamp: Vec3 = [-3, 3, -6];
const setupWith = (part: object) =>
  onePassSetup({
    camera: { position: [0, 0, 4], aim: [0, 6, 0.3], focalLengthMm: 24 },
    pass: { waypoints: [{ time: 0, position: [-3, 6, 3], aim: [0, 6, 0.6] }] },
    subjects: [{ id: 'post', name: 'Post', position: [0, 6, 0], parts: [{ position: [0, 0, 0], ...part }] }],
  });
const square = setupWith({ kind: 'box', widthMetres: 0.6, depthMetres: 0.6, heightMetres: 1.2 });
const round = setupWith({ kind: 'cylinder', radiusMetres: 0.3, heightMetres: 1.2, sides: 48 });
const { view } = buildWorld(square, square.schemes[0] as Scheme);
const asked = (setup: Setup, shadows: boolean, outline: boolean, frameIds = ['frame']) =>
  schemeMarks(setup, setup.schemes[0] as Scheme, { frameIds, wants: { shadows, outline, sharpness: false } });
const pointsOf = (line: Line) =>
  Array.from({ length: line.length / 2 }, (_, i) => [line[2 * i], line[2 * i + 1]] as const);

describe('schemeMarks', () => {
  it('the shadow’s far corners lie where similar triangles put them (half a cell of 240)', () => {
    const [shadows] = asked(square, true, false).shadows;
    expect(shadows?.rings).toHaveLength(1);
    const points = pointsOf(shadows?.rings[0] as Line);
    // corners of the top thrown on the ground from a lamp at 3 m: away from it by 3 / (3 - 1.2)
    for (const z of [-5.7, -6.3]) {
      const k = 3 / (3 - 1.2);
      const corner: Vec3 = [lamp[0] + (0.3 - lamp[0]) * k, 0, lamp[2] + (z - lamp[2]) * k];
      const [x, y] = projectPoint(view, corner) as readonly [number, number];
      const nearest = Math.min(...points.map(([px, py]) => Math.hypot((px as number) - x, ((py as number) - y) / 1.5)));
      expect(nearest).toBeLessThan(0.5 / 240);
    }
    const [x, y] = shadows?.middle ?? [0, 0];
    const [fromX] = projectPoint(view, [0.3, 0, -6]) as readonly [number, number];
    expect(x).toBeGreaterThan(fromX);
    expect(y).toBeGreaterThan(0);
  });

  it('the outline of a round post is lit on the lamp’s side, dark on the other', () => {
    const [outline] = asked(round, false, true).outlines;
    expect(outline?.subjectId).toBe('post');
    const lit = outline?.runs.filter(({ litBy }) => litBy.length > 0) ?? [];
    const dark = outline?.runs.filter(({ litBy }) => litBy.length === 0) ?? [];
    expect(lit[0]?.litBy).toEqual([{ frameId: 'frame', passId: 'pass' }]);
    const xs = (runs: typeof lit) => runs.flatMap(({ points }) => pointsOf(points).map(([x]) => x as number));
    const [left] = projectPoint(view, [-0.3, 0.6, -6]) as readonly [number, number];
    const [right] = projectPoint(view, [0.3, 0.6, -6]) as readonly [number, number];
    expect(Math.min(...xs(lit))).toBeLessThan(left + 0.01);
    expect(Math.min(...xs(dark))).toBeGreaterThan((left + right) / 2);
  });

  it('gives only what is asked for, and nothing of frames that are not', () => {
    expect(asked(square, true, false).outlines).toEqual([]);
    expect(asked(round, false, true).shadows).toEqual([]);
    expect(asked(square, true, false, []).shadows).toEqual([]);
  });
});
