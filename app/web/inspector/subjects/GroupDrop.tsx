import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../../state/app-store.ts';
import { groupWith } from '../../state/edits/subject-groups.ts';
import { Drop } from '../../ui/Drop.tsx';

/** Puts a subject with another one, so that they move together. */
export const GroupDrop = ({ subject }: { subject: Subject }) => {
  const { subjects } = useSetup();
  const { edit } = useApp.getState();
  const others = subjects.filter(({ id, group }) => id !== subject.id && (group === null || group !== subject.group));
  if (others.length === 0) return null;
  return (
    <Drop label="Group with…" listLabel={`Group ${subject.name} with`} closesOnPress>
      {others.map(({ id, name, group }) => (
        <button key={id} type="button" onClick={() => edit((s) => groupWith(s, subject.id, id))}>
          {name} {group !== null && <span className="quiet">in {group}</span>}
        </button>
      ))}
    </Drop>
  );
};
