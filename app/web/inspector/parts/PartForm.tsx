import type { Finish, Part } from '../../../../core/setup/schema/setup.ts';
import { NumberField } from '../../ui/NumberField.tsx';
import { PlaceFields } from '../PlaceFields.tsx';
import { Fold } from './Fold.tsx';
import { MoreOfPart } from './MoreOfPart.tsx';
import { OpeningFields } from './OpeningFields.tsx';
import { OutlineFields } from './OutlineFields.tsx';
import { PartProblemLine } from './PartProblemLine.tsx';
import { ProfileFields } from './ProfileFields.tsx';
import { partSpecs } from './part-specs.ts';
import { SectionFields } from './SectionFields.tsx';
import { SpecFields } from './SpecFields.tsx';
import { type PutPart, usePartEdit } from './use-part-edit.ts';

interface PartFormProps {
  readonly subjectId: string;
  readonly index: number;
  readonly part: Part;
  readonly finishOfSubject: Finish;
  /** Whether it is the only part of its subject: where that stands is told by the subject’s own place. */
  readonly isAlone?: boolean;
}

const turns = [
  ['turnDegrees', 'Turn', 360],
  ['tiltDegrees', 'Tilt back', 180],
  ['rollDegrees', 'Roll right', 180],
] as const;

/** Where a part stands in its subject, and how it is turned. */
const PlaceOfPart = ({ part, put }: { part: Part; put: PutPart }) => (
  <div className="fields">
    <PlaceFields position={part.position} onChange={(position) => put({ ...part, position })} />
    {turns.map(([key, label, most]) => (
      <NumberField
        key={key}
        label={label}
        unit="°"
        value={part[key]}
        min={-most}
        max={most}
        onChange={(degrees) => put({ ...part, [key]: degrees })}
      />
    ))}
  </div>
);

/** What can be typed about a part: its sizes, its place in the subject, and the rest behind a fold. */
export const PartForm = ({ subjectId, index, part, finishOfSubject, isAlone = false }: PartFormProps) => {
  const { put, problem } = usePartEdit(subjectId, index, part);
  const sizes = partSpecs[part.kind].sizes;
  return (
    <div className="part-form">
      {sizes.length > 0 && <SpecFields specs={sizes} part={part} put={put} />}
      <PartProblemLine problem={problem} of={['heightMetres', 'tubeRadiusMetres']} />
      {part.kind === 'wall' && <OpeningFields wall={part} put={put} problem={problem} />}
      {part.kind === 'prism' && <OutlineFields prism={part} put={put} problem={problem} />}
      {part.kind === 'turned' && <ProfileFields turned={part} put={put} problem={problem} />}
      {part.kind === 'loft' && <SectionFields loft={part} put={put} problem={problem} />}
      {!isAlone && <PlaceOfPart part={part} put={put} />}
      <Fold title="More">
        <MoreOfPart part={part} put={put} finishOfSubject={finishOfSubject} />
        <PartProblemLine problem={problem} of={['finish', 'rough', 'dimples', 'name', 'sides']} />
      </Fold>
    </div>
  );
};
