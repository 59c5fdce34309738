import type { SchemeReport } from '../cautions/setup-report.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import type { Scheme, Setup } from '../setup/schema/setup.ts';
import type { CardMark } from './field-card.ts';

/** Subject of each pass by frame and pass, as its reading has it; null where none is near. */
const subjectsOf = ({ frames }: SchemeReport): Map<string, string | null> =>
  new Map(frames.flatMap(({ id, passes }) => passes.map(({ passId, rim }) => [`${id} ${passId}`, rim.subjectId])));

/** The one that occurs most often; of equals, the first. */
const commonest = (ids: readonly string[]): string | null => {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  let [best, most] = [null as string | null, 0];
  for (const [id, count] of counts) if (count > most) [best, most] = [id, count];
  return best;
};

/** Aims that lie so near each other are one: the mark is then the first of them, as the slips have it. Our choice. */
const sameAimMetres = 1;

/**
 * The mark that clocks and paces of all rows are counted from: the mean, on the level, of what the passes about the
 * scheme's subject are aimed at, a pass with several waypoints counting once. The subject is the one that most passes
 * are about. A scheme without passes has its mark where its camera looks.
 */
export const cardMark = (setup: Setup, scheme: Scheme, report: SchemeReport): CardMark => {
  const subjects = subjectsOf(report);
  const passes = scheme.frames.flatMap((frame) =>
    frame.passes.map((pass) => ({ pass, subjectId: subjects.get(`${frame.id} ${pass.id}`) ?? null })),
  );
  const main = commonest(passes.flatMap(({ subjectId }) => subjectId ?? []));
  const about = passes.filter(({ subjectId }) => main === null || subjectId === main);
  const aims = about.map(
    ({ pass: { waypoints } }): GroundPoint => [
      waypoints.reduce((sum, { aim }) => sum + aim[0], 0) / waypoints.length,
      waypoints.reduce((sum, { aim }) => sum + aim[1], 0) / waypoints.length,
    ],
  );
  const { aim } = scheme.camera ?? setup.camera;
  const mean = (axis: 0 | 1) =>
    aims.length > 0 ? aims.reduce((sum, place) => sum + place[axis], 0) / aims.length : aim[axis];
  const own = passes.flatMap(({ pass: { waypoints } }) =>
    waypoints.map(({ aim: [east, north] }) => [east, north] as const),
  );
  const [first] = own;
  const isOne = own.every((a) => own.every((b) => Math.hypot(a[0] - b[0], a[1] - b[1]) <= sameAimMetres));
  return {
    place: first && isOne ? first : [mean(0), mean(1)],
    subjectName: setup.subjects.find(({ id }) => id === main)?.name ?? null,
  };
};
