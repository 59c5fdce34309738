import type { Finish, Part } from '../../../../core/setup/schema/setup.ts';
import { Check } from '../../ui/Check.tsx';
import { TextField } from '../../ui/TextField.tsx';
import { FinishFields } from '../FinishFields.tsx';
import { partSpecs } from './part-specs.ts';
import { SpecFields } from './SpecFields.tsx';
import { DimpleFields, RoughFields } from './SurfaceFields.tsx';
import type { PutPart } from './use-part-edit.ts';

interface MoreOfPartProps {
  readonly part: Part;
  readonly put: PutPart;
  /** What a part without a finish of its own takes. */
  readonly finishOfSubject: Finish;
}

/** What is asked of a part seldom: its name, its finish, how round it is, how even. */
export const MoreOfPart = ({ part, put, finishOfSubject }: MoreOfPartProps) => {
  const specs = partSpecs[part.kind].more;
  return (
    <>
      <TextField label="Name of the part" value={part.name} onChange={(name) => put({ ...part, name })} />
      {specs.length > 0 && <SpecFields specs={specs} part={part} put={put} />}
      {part.kind === 'turned' && (
        <Check
          label="Closed"
          note="the last point joins the first, as in a well’s rim"
          isOn={part.closed}
          onChange={(closed) => put({ ...part, closed })}
        />
      )}
      {'rough' in part && <RoughFields rough={part.rough} onChange={(rough) => put({ ...part, rough })} />}
      <FinishFields
        finish={part.finish ?? finishOfSubject}
        onChange={(finish, run) => put({ ...part, finish }, run)}
        inherits={{
          label: 'As the subject',
          isInherited: part.finish === null,
          onInherit: () => put({ ...part, finish: null }),
        }}
      />
      {part.kind === 'box' && <DimpleFields dimples={part.dimples} onChange={(dimples) => put({ ...part, dimples })} />}
    </>
  );
};
