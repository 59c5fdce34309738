import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { renameSubject } from '../../state/edits/subject-edits.ts';
import { TextField } from '../../ui/TextField.tsx';
import { PartForm } from '../parts/PartForm.tsx';
import { Parts } from '../parts/Parts.tsx';
import { GroupLine } from './GroupLine.tsx';
import { KitFields } from './KitFields.tsx';
import { SubjectActions } from './SubjectActions.tsx';
import { SubjectFinish } from './SubjectFinish.tsx';
import { SubjectPlace } from './SubjectPlace.tsx';

/** Everything about one subject that can be typed: its size first, then its place, then what it is made of. */
export const SubjectInspector = ({ subject, schemeId }: { subject: Subject; schemeId: string }) => {
  const { edit } = useApp.getState();
  const [only] = subject.parts;
  return (
    <>
      <TextField
        label="Name"
        value={subject.name}
        onChange={(name) => edit((s) => renameSubject(s, subject.id, name))}
      />
      {subject.locked && <p className="quiet">Locked: it stays as it is. Unlock it to change it.</p>}
      <fieldset className="plain" disabled={subject.locked}>
        {subject.kit && <KitFields subjectId={subject.id} kit={subject.kit} />}
        {!subject.kit && only && subject.parts.length === 1 && (
          <section className="group">
            <h3>Size</h3>
            <PartForm subjectId={subject.id} index={0} part={only} finishOfSubject={subject.finish} isAlone />
          </section>
        )}
        <SubjectPlace subject={subject} />
      </fieldset>
      <SubjectActions subject={subject} schemeId={schemeId} />
      {subject.group !== null && <GroupLine subject={subject} group={subject.group} />}
      <fieldset className="plain" disabled={subject.locked}>
        <SubjectFinish subject={subject} />
        <Parts subject={subject} />
      </fieldset>
    </>
  );
};
