import { memo } from 'react';
import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { setSubjectHidden, setSubjectLocked } from '../../state/edits/subject-edits.ts';
import { useLengths } from '../../state/lengths.ts';
import { Slip } from '../../ui/Slip.tsx';
import { HideButton, LockButton } from './RowButtons.tsx';
import { SubjectInspector } from './SubjectInspector.tsx';
import { subjectWords } from './subject-words.ts';

interface SubjectSlipProps {
  readonly subject: Subject;
  readonly schemeId: string;
  readonly isOpen: boolean;
}

/** A subject as a strip that opens. */
export const SubjectSlip = memo(({ subject, schemeId, isOpen }: SubjectSlipProps) => {
  const { edit, select } = useApp.getState();
  // its sizes are written anew in other lengths
  useLengths();
  const { id, name, hidden, locked } = subject;
  const head = (
    <>
      <svg viewBox="0 0 14 14" width={12} height={12} aria-hidden="true">
        <path d="M2 13L4 2L9 1L12 13Z" strokeDasharray={hidden ? '2 2' : undefined} />
      </svg>
      <strong>{name}</strong>
      <span className="quiet">{subjectWords(subject)}</span>
    </>
  );
  const beside = (
    <>
      <HideButton name={name} isOn={hidden} onChange={(isOn) => edit((s) => setSubjectHidden(s, id, isOn))} />
      <LockButton name={name} isOn={locked} onChange={(isOn) => edit((s) => setSubjectLocked(s, id, isOn))} />
    </>
  );
  return (
    <Slip
      head={head}
      beside={beside}
      isOpen={isOpen}
      onToggle={() => select(isOpen ? null : { kind: 'subject', subjectId: id })}
    >
      <SubjectInspector subject={subject} schemeId={schemeId} />
    </Slip>
  );
});
