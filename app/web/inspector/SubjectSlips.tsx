import { useApp, useSetup } from '../state/app-store.ts';
import { moveSubject, turnSubject } from '../state/edits/move-subjects.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { PlaceFields } from './PlaceFields.tsx';
import { Slip } from './Slip.tsx';

/** Each subject as a strip that opens. */
export const SubjectSlips = () => {
  const setup = useSetup();
  const selection = useApp((state) => state.selection);
  const { edit, select } = useApp.getState();
  return setup.subjects.map(({ id, name, parts, position, turnDegrees }) => {
    const isOpen = selection?.kind === 'subject' && selection.subjectId === id;
    const head = (
      <>
        <svg viewBox="0 0 14 14" width={12} height={12} aria-hidden="true">
          <path d="M2 13L4 2L9 1L12 13Z" />
        </svg>
        <strong>{name}</strong>
        <span>{parts.length === 1 ? '1 part' : `${parts.length} parts`}</span>
      </>
    );
    return (
      <Slip
        key={id}
        head={head}
        isOpen={isOpen}
        onToggle={() => select(isOpen ? null : { kind: 'subject', subjectId: id })}
      >
        <div className="fields">
          <PlaceFields position={position} onChange={(to) => edit((s) => moveSubject(s, id, to))} />
          <NumberField
            label="Turn"
            unit="°"
            value={turnDegrees}
            min={-360}
            max={360}
            onChange={(v) => edit((s) => turnSubject(s, id, v))}
          />
        </div>
      </Slip>
    );
  });
};
