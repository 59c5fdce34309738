import { useState } from 'react';
import type { Opening, PartOf } from '../../../../core/setup/schema/setup.ts';
import type { PartProblem } from '../../state/edits/part-problem.ts';
import { Choice } from '../../ui/Choice.tsx';
import { NumberField } from '../../ui/NumberField.tsx';
import { neededRoom, type OpeningKind, openingKinds, openingWord, withOpening } from './opening-words.ts';
import { PartProblemLine } from './PartProblemLine.tsx';
import type { PutPart } from './use-part-edit.ts';
import { WallDrawing } from './WallDrawing.tsx';

const numbers = [
  ['widthMetres', 'Width', 0.02, 500],
  ['heightMetres', 'Height', 0.02, 500],
  ['acrossMetres', 'Across', -1000, 1000],
  ['sillMetres', 'Sill', 0, 200],
] as const;

const heads = [
  ['flat', 'flat'],
  ['round', 'round arch'],
  ['pointed', 'pointed arch'],
] as const;

interface OpeningRowProps {
  readonly opening: Opening;
  readonly number: number;
  readonly onChange: (opening: Opening) => void;
  readonly onRemove: () => void;
}

const OpeningRow = ({ opening, number, onChange, onRemove }: OpeningRowProps) => (
  <>
    <div className="opening-head">
      <h4>
        {number} · {openingWord(opening)}
      </h4>
      <button
        type="button"
        className="take-out"
        aria-label={`Take out ${openingWord(opening).toLowerCase()} ${number}`}
        onClick={onRemove}
      >
        ×
      </button>
    </div>
    <div className="fields">
      {numbers.map(([key, label, min, max]) => (
        <NumberField
          key={key}
          label={label}
          unit="m"
          value={opening[key]}
          min={min}
          max={max}
          step={0.1}
          digits={3}
          onChange={(value) => onChange({ ...opening, [key]: value })}
        />
      ))}
      <Choice
        label="Head"
        value={opening.head}
        options={heads}
        onChange={(head) => onChange({ ...opening, head: head as Opening['head'] })}
      />
    </div>
  </>
);

interface OpeningFieldsProps {
  readonly wall: PartOf<'wall'>;
  readonly put: PutPart;
  readonly problem: PartProblem | null;
}

/** The openings of a wall, one row each. */
export const OpeningFields = ({ wall, put, problem }: OpeningFieldsProps) => {
  const [full, setFull] = useState<{ readonly wall: PartOf<'wall'>; readonly kind: OpeningKind } | null>(null);
  const { openings } = wall;
  const add = (kind: OpeningKind) => {
    const next = withOpening(wall, kind);
    setFull(next ? null : { wall, kind });
    if (next) put(next);
  };
  const refusedAt = problem?.path[0] === 'openings' ? problem.path[1] : null;
  return (
    <div className="openings" role="group" aria-label="Openings">
      <WallDrawing wall={wall} />
      {openings.length > 0 && (
        <ul>
          {openings.map((opening, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: openings have no names of their own
            <li key={i} className="opening">
              <OpeningRow
                opening={opening}
                number={i + 1}
                onChange={(next) => put({ ...wall, openings: openings.with(i, next) })}
                onRemove={() => put({ ...wall, openings: openings.toSpliced(i, 1) })}
              />
              {refusedAt === i && <PartProblemLine problem={problem} of={['openings']} />}
            </li>
          ))}
        </ul>
      )}
      {typeof refusedAt !== 'number' && <PartProblemLine problem={problem} of={['openings']} />}
      <div className="actions">
        {openingKinds.map((kind) => (
          <button key={kind} type="button" onClick={() => add(kind)}>
            Add {kind === 'archway' ? 'an' : 'a'} {kind}
          </button>
        ))}
      </div>
      {full?.wall === wall && (
        <p role="alert" className="part-problem">
          No room for another {full.kind}: it needs {neededRoom(full.kind)} of wall clear of the other openings.
        </p>
      )}
    </div>
  );
};
