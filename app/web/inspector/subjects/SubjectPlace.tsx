import type { Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { leanSubject, moveSubject, turnSubject } from '../../state/edits/move-subjects.ts';
import { NumberField } from '../../ui/NumberField.tsx';
import { PlaceFields } from '../PlaceFields.tsx';

/** Where a subject stands and how it is turned. Typing into a locked one says that it is locked. */
export const SubjectPlace = ({ subject }: { subject: Subject }) => {
  const { edit, tell } = useApp.getState();
  const { id, name, position, turnDegrees, tiltDegrees, rollDegrees, locked } = subject;
  const change = (how: (setup: Setup) => Setup) => {
    if (locked) tell({ tone: 'problem', text: `${name} is locked and stays where it is. Unlock it first.` });
    else edit(how);
  };
  return (
    <section className="group">
      <h3>Place{locked && ' · locked'}</h3>
      <div className="fields">
        <PlaceFields position={position} onChange={(to) => change((s) => moveSubject(s, id, to))} />
        <NumberField
          label="Turn"
          unit="°"
          value={turnDegrees}
          min={-360}
          max={360}
          onChange={(degrees) => change((s) => turnSubject(s, id, degrees))}
        />
        <NumberField
          label="Tilt back"
          unit="°"
          value={tiltDegrees}
          min={-180}
          max={180}
          onChange={(degrees) => change((s) => leanSubject(s, id, { tiltDegrees: degrees }))}
        />
        <NumberField
          label="Roll right"
          unit="°"
          value={rollDegrees}
          min={-180}
          max={180}
          onChange={(degrees) => change((s) => leanSubject(s, id, { rollDegrees: degrees }))}
        />
      </div>
    </section>
  );
};
