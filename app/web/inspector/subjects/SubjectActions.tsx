import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { deleteSubject } from '../../state/delete-subject.ts';
import { duplicateSubject } from '../../state/edits/add-subjects.ts';
import { setDown } from '../../state/edits/set-down.ts';
import { mirrorSubject, setSubjectHidden, setSubjectLocked } from '../../state/edits/subject-edits.ts';
import { GroupDrop } from './GroupDrop.tsx';
import { showOpenSlip } from './show-open-slip.ts';

/** What can be done with a subject as a whole. */
export const SubjectActions = ({ subject, schemeId }: { subject: Subject; schemeId: string }) => {
  const { edit, select } = useApp.getState();
  const { id, mirrored, hidden, locked } = subject;
  const duplicate = () => {
    let copyId = id;
    edit((setup) => {
      const made = duplicateSubject(setup, schemeId, id);
      copyId = made.subjectId;
      return made.setup;
    });
    select({ kind: 'subject', subjectId: copyId });
    showOpenSlip();
  };
  const remove = () => {
    deleteSubject(subject);
    // what had the focus is gone
    document.querySelector<HTMLElement>('.add-subject summary')?.focus({ preventScroll: true });
  };
  return (
    <div className="actions">
      <button type="button" onClick={duplicate}>
        Duplicate
      </button>
      <button
        type="button"
        aria-pressed={mirrored}
        disabled={locked}
        title="Exchange its east and west"
        onClick={() => edit((s) => mirrorSubject(s, id))}
      >
        Mirror
      </button>
      <button
        type="button"
        disabled={locked}
        title="Stand it on the ground, or on what lies under it"
        onClick={() => edit((s) => setDown(s, id))}
      >
        Set down
      </button>
      <button type="button" aria-pressed={hidden} onClick={() => edit((s) => setSubjectHidden(s, id, !hidden))}>
        Hide
      </button>
      <button type="button" aria-pressed={locked} onClick={() => edit((s) => setSubjectLocked(s, id, !locked))}>
        Lock
      </button>
      <GroupDrop subject={subject} />
      <button type="button" disabled={locked} onClick={remove}>
        Delete
      </button>
    </div>
  );
};
