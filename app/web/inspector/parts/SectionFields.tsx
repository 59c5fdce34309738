import { useState } from 'react';
import type { PartOf } from '../../../../core/setup/schema/setup.ts';
import type { PartProblem } from '../../state/edits/part-problem.ts';
import { Choice } from '../../ui/Choice.tsx';
import { NumberField } from '../../ui/NumberField.tsx';
import { PartProblemLine } from './PartProblemLine.tsx';
import { PointsEditor } from './PointsEditor.tsx';
import { type DocumentPoint, pointAfter } from './points.ts';
import type { PutPart } from './use-part-edit.ts';

type Loft = PartOf<'loft'>;
type Section = Loft['sections'][number];

interface SectionFieldsProps {
  readonly loft: Loft;
  readonly put: PutPart;
  readonly problem: PartProblem | null;
}

/** A section between two that follow each other, or a metre past the last one. */
const sectionAfter = (sections: readonly Section[], index: number): Section => {
  const at = sections[index] as Section;
  const next = sections[index + 1];
  if (!next) return { ...at, northMetres: at.northMetres + 1 };
  const between = (a: number, b: number) => Math.round(((a + b) / 2) * 1e4) / 1e4 + 0;
  return {
    northMetres: between(at.northMetres, next.northMetres),
    outline: at.outline.map((point, i): DocumentPoint => {
      const other = next.outline[i] ?? point;
      return [between(point[0], other[0]), between(point[1], other[1])];
    }),
  };
};

/** The sections of a skin, one at a time. A point is added to all of them, or taken out of all: they keep as many. */
export const SectionFields = ({ loft, put, problem }: SectionFieldsProps) => {
  const { sections } = loft;
  const [chosen, setChosen] = useState(0);
  const index = Math.min(chosen, sections.length - 1);
  const section = sections[index] as Section;
  const change = (next: Section, run?: string) => put({ ...loft, sections: sections.with(index, next) }, run);
  const changeAll = (how: (outline: DocumentPoint[]) => DocumentPoint[]) =>
    put({ ...loft, sections: sections.map((each) => ({ ...each, outline: how(each.outline) })) });
  return (
    <>
      <div className="fields">
        <Choice
          label="Section"
          value={String(index)}
          options={sections.map(
            (_, i) =>
              [String(i), i === 0 ? `1 of ${sections.length}, south` : `${i + 1} of ${sections.length}`] as const,
          )}
          onChange={(value) => setChosen(Number(value))}
        />
        <NumberField
          label="North"
          unit="m"
          value={section.northMetres}
          min={-2000}
          max={2000}
          step={0.1}
          digits={3}
          onChange={(northMetres) => change({ ...section, northMetres })}
        />
      </div>
      <PointsEditor
        key={index}
        points={section.outline}
        isClosed
        axes={['East', 'Up']}
        leastAcross={-2000}
        fewest={3}
        most={128}
        onChange={(outline, run) => change({ ...section, outline }, run)}
        onInsert={(at) => changeAll((outline) => outline.toSpliced(at, 0, pointAfter(outline, at - 1, true)))}
        onRemove={(at) => changeAll((outline) => outline.toSpliced(at, 1))}
      >
        <PartProblemLine problem={problem} of={['sections']} />
      </PointsEditor>
      <div className="actions">
        <button
          type="button"
          disabled={sections.length >= 48}
          onClick={() => {
            put({ ...loft, sections: sections.toSpliced(index + 1, 0, sectionAfter(sections, index)) });
            setChosen(index + 1);
          }}
        >
          Add a section
        </button>
        <button
          type="button"
          disabled={sections.length <= 2}
          onClick={() => put({ ...loft, sections: sections.toSpliced(index, 1) })}
        >
          Remove section {index + 1}
        </button>
      </div>
    </>
  );
};
