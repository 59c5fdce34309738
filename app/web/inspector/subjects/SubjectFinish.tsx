import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { makeFinishAlike } from '../../state/edits/part-edits.ts';
import { setSubjectFinish } from '../../state/edits/subject-edits.ts';
import { FinishFields } from '../FinishFields.tsx';

/** How a subject returns light, but for those of its parts that do so in their own way. */
export const SubjectFinish = ({ subject: { id, finish, parts, kit } }: { subject: Subject }) => {
  const { edit } = useApp.getState();
  const own = parts.filter((part) => part.finish !== null).length;
  return (
    <section className="group">
      <FinishFields finish={finish} onChange={(next, run) => edit((s) => setSubjectFinish(s, id, next), run)} />
      {own > 0 && (
        <div className="own-finishes">
          <p className="quiet">
            {own} of {parts.length} parts {own === 1 ? 'has a finish of its' : 'have finishes of their'} own.
          </p>
          <button
            type="button"
            className="small"
            title={
              kit ? 'From then on the parts are yours: the numbers of the kit go' : 'Every part takes the finish above'
            }
            onClick={() => edit((s) => makeFinishAlike(s, id))}
          >
            Make all alike
          </button>
        </div>
      )}
    </section>
  );
};
