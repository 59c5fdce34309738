import type { SubjectOutline } from '../state/marks.ts';
import { linePath } from './line-path.ts';
import type { PassInk } from './pass-inks.ts';

interface OutlineMarksProps {
  readonly outlines: readonly SubjectOutline[];
  readonly inks: ReadonlyMap<string, PassInk>;
  readonly size: readonly [width: number, height: number];
}

/** Outlines of the subjects: a doubled line where a lamp lights them, in its colour; thin and dotted where none does. */
export const OutlineMarks = ({ outlines, inks, size }: OutlineMarksProps) => {
  const runs = outlines.flatMap(({ subjectId, runs: own }) => own.map((run, r) => ({ key: `${subjectId}/${r}`, run })));
  const colourOf = ([first, ...others]: (typeof runs)[number]['run']['litBy']) =>
    // where several light it, it is nobody's own
    first && others.length === 0 ? inks.get(`${first.frameId}/${first.passId}`)?.colour : undefined;
  return (
    <g aria-hidden="true">
      {runs.map(({ key, run: { points, litBy } }) => {
        const path = linePath(points, size);
        return litBy.length === 0 ? (
          <path key={key} className="picture-unlit" d={path} />
        ) : (
          <g key={key} className="picture-lit" style={{ color: colourOf(litBy) }}>
            <path className="picture-lit-wide" d={path} />
            <path className="picture-lit-narrow" d={path} />
          </g>
        );
      })}
    </g>
  );
};
