import { useState } from 'react';
import type { PartOf } from '../../../../core/setup/schema/setup.ts';
import type { PartProblem } from '../../state/edits/part-problem.ts';
import { Choice } from '../../ui/Choice.tsx';
import { PartProblemLine } from './PartProblemLine.tsx';
import { PointsEditor } from './PointsEditor.tsx';
import { type DocumentPoint, extentOf } from './points.ts';
import type { PutPart } from './use-part-edit.ts';

interface OutlineFieldsProps {
  readonly prism: PartOf<'prism'>;
  readonly put: PutPart;
  readonly problem: PartProblem | null;
}

/** A small square hole round the middle of an outline's points. */
const firstHole = (outline: readonly DocumentPoint[]): DocumentPoint[] => {
  const mean = (axis: 0 | 1) => outline.reduce((sum, p) => sum + p[axis], 0) / outline.length;
  const half = Math.round(extentOf(outline) * 50) / 1000;
  const [x, y] = [Math.round(mean(0) * 100) / 100, Math.round(mean(1) * 100) / 100];
  return [
    [x - half, y - half],
    [x + half, y - half],
    [x + half, y + half],
    [x - half, y + half],
  ];
};

/** The outline of a prism and the holes in it, one at a time. */
export const OutlineFields = ({ prism, put, problem }: OutlineFieldsProps) => {
  const { outline, holes } = prism;
  const [chosen, setChosen] = useState(-1);
  const hole = Math.min(chosen, holes.length - 1);
  const points = holes[hole] ?? outline;
  const change = (next: DocumentPoint[], run?: string) =>
    put(hole < 0 ? { ...prism, outline: next } : { ...prism, holes: holes.with(hole, next) }, run);
  return (
    <>
      {holes.length > 0 && (
        <Choice
          label="Which line"
          value={String(hole)}
          options={[['-1', 'outline'] as const, ...holes.map((_, i) => [String(i), `hole ${i + 1}`] as const)]}
          onChange={(value) => setChosen(Number(value))}
        />
      )}
      <PointsEditor
        key={hole}
        points={points}
        isClosed
        axes={['East', 'North']}
        leastAcross={-2000}
        fewest={3}
        most={256}
        onChange={change}
        onInsert={(at, point) => change(points.toSpliced(at, 0, point))}
        onRemove={(at) => change(points.toSpliced(at, 1))}
      >
        <PartProblemLine problem={problem} of={['outline', 'holes']} />
      </PointsEditor>
      <div className="actions">
        <button
          type="button"
          disabled={holes.length >= 16}
          onClick={() => {
            put({ ...prism, holes: [...holes, firstHole(outline)] });
            setChosen(holes.length);
          }}
        >
          Add a hole
        </button>
        {hole >= 0 && (
          <button type="button" onClick={() => put({ ...prism, holes: holes.toSpliced(hole, 1) })}>
            Remove hole {hole + 1}
          </button>
        )}
      </div>
    </>
  );
};
