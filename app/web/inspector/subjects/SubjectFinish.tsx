import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { setSubjectFinish } from '../../state/edits/subject-edits.ts';
import { FinishFields } from '../FinishFields.tsx';

/** How a subject returns light, but for those of its parts that do so in their own way. */
export const SubjectFinish = ({ subject: { id, finish, parts } }: { subject: Subject }) => {
  const { edit } = useApp.getState();
  const own = parts.filter((part) => part.finish !== null).length;
  return (
    <section className="group">
      <h3>Finish</h3>
      <FinishFields finish={finish} onChange={(next) => edit((s) => setSubjectFinish(s, id, next))} />
      {own > 0 && (
        <p className="quiet">
          {own} of {parts.length} parts {own === 1 ? 'has a finish of its' : 'have finishes of their'} own.
        </p>
      )}
    </section>
  );
};
