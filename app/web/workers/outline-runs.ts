import { type CastingSource, type LitGrid, litState, litStateAt } from '../../../core/readings/lit-grid.ts';
import type { SurfacePoint } from '../../../core/trace/surface-point.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { type ContourPoint, contoursOf, type Place } from './contours.ts';
import type { MarkedPass, OutlineRun } from './marks-messages.ts';
import { drawnLine } from './simplify-line.ts';

/** A pass that is marked, with its light. */
export interface MarkedLight extends MarkedPass {
  readonly source: CastingSource;
}

/** Numbers of the lights that reach a point of an outline, joined; null where the contour is no outline. */
type Mark = string | null;

/** What lies behind an outline is farther away than this share over; less is the foot where the subject meets the ground. */
const behind = 1.02;

/** A run of fewer points between two alike is a flicker of the rays. */
const shortest = 3;

const markOf = (
  stage: Stage,
  subject: number,
  lights: readonly MarkedLight[],
  { inside, outside }: ContourPoint,
  look: (place: Place) => SurfacePoint | null,
): Mark => {
  const own = inside && look(inside);
  if (!own || own.subject !== subject || !outside) return null;
  const other = look(outside);
  if (other && other.distance <= own.distance * behind) return null;
  return lights.flatMap(({ source }, s) => (litStateAt(stage, source, own) === litState.lit ? [s] : [])).join();
};

/** Pieces of a closed row of marks that are alike: first and last index, counted on past the end where a piece runs over it. */
export const runsOf = (marks: readonly Mark[]): { mark: Mark; from: number; to: number }[] => {
  const count = marks.length;
  const start = marks.findIndex((mark, i) => mark !== marks[(i + count - 1) % count]);
  if (start < 0) return count > 0 ? [{ mark: marks[0] as Mark, from: 0, to: count - 1 }] : [];
  const runs: { mark: Mark; from: number; to: number }[] = [];
  for (let k = 0; k < count; k++) {
    const mark = marks[(start + k) % count] as Mark;
    const last = runs.at(-1);
    if (last?.mark === mark) last.to = start + k;
    else runs.push({ mark, from: start + k, to: start + k });
  }
  return runs;
};

/** Short runs between two that are alike take their neighbours' mark. */
const withoutFlicker = (marks: readonly Mark[]): Mark[] => {
  const calm = [...marks];
  const runs = runsOf(marks);
  runs.forEach(({ mark, from, to }, r) => {
    const [before, after] = [runs.at(r - 1), runs[(r + 1) % runs.length]];
    if (to - from + 1 >= shortest || before?.mark !== after?.mark || mark === null) return;
    for (let k = from; k <= to; k++) calm[k % calm.length] = before?.mark as Mark;
  });
  return calm;
};

/**
 * The outline of a subject as the camera sees it, cut where the lamps that light it change. Edges where something
 * stands in front, the picture's own edges and the foot of the subject are left out, as in `silhouetteOf`.
 */
export const outlineRuns = (
  stage: Stage,
  { columns, rows, subjects }: LitGrid,
  subject: number,
  lights: readonly MarkedLight[],
  look: (place: Place) => SurfacePoint | null,
): OutlineRun[] => {
  if (!subjects.includes(subject)) return [];
  const mask = { columns, rows, has: (cell: number) => subjects[cell] === subject };
  return contoursOf(mask, (place) => look(place)?.subject === subject).flatMap((ring) => {
    const points = ring.slice(1);
    const marks = withoutFlicker(points.map((point) => markOf(stage, subject, lights, point, look)));
    return runsOf(marks).flatMap(({ mark, from, to }): OutlineRun[] => {
      if (mark === null) return [];
      // on to the next run's first point, so that two runs of one outline meet
      const places = Array.from(
        { length: to - from + 2 },
        (_, k) => points[(from + k) % points.length]?.place as Place,
      );
      const lit = mark.split(',');
      const litBy = lights
        .filter((_, s) => lit.includes(String(s)))
        .map(({ frameId, passId }) => ({ frameId, passId }));
      return [{ points: drawnLine(places), litBy }];
    });
  });
};
