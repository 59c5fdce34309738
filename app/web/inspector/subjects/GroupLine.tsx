import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../../state/app-store.ts';
import { renameGroup, ungroup } from '../../state/edits/subject-groups.ts';
import { TextField } from '../../ui/TextField.tsx';

/** The group of a subject, and who else is in it. */
export const GroupLine = ({ subject, group }: { subject: Subject; group: string }) => {
  const { subjects } = useSetup();
  const { edit } = useApp.getState();
  const others = subjects.filter((each) => each.group === group && each.id !== subject.id);
  const namesOf = (isLocked: boolean) =>
    others
      .filter(({ locked }) => locked === isLocked)
      .map(({ name }) => name)
      .join(', ');
  const [free, held] = [namesOf(false), namesOf(true)];
  return (
    <section className="group">
      <div className="group-line">
        <TextField label="Group" value={group} onChange={(name) => edit((s) => renameGroup(s, group, name))} />
        <button type="button" onClick={() => edit((s) => ungroup(s, subject.id))}>
          Ungroup
        </button>
      </div>
      {free && <p className="quiet">Moves and turns together with {free}.</p>}
      {held && <p className="quiet">Locked and left where it is: {held}.</p>}
    </section>
  );
};
