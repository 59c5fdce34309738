import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { leanSubject, moveSubject, turnSubject } from '../../state/edits/move-subjects.ts';
import { NumberField } from '../../ui/NumberField.tsx';
import { PlaceFields } from '../PlaceFields.tsx';

/** Where a subject stands and how it is turned. */
export const SubjectPlace = ({ subject }: { subject: Subject }) => {
  const { edit } = useApp.getState();
  const { id, position, turnDegrees, tiltDegrees, rollDegrees } = subject;
  return (
    <section className="group">
      <h3>Place</h3>
      <div className="fields">
        <PlaceFields position={position} onChange={(to) => edit((s) => moveSubject(s, id, to))} />
        <NumberField
          label="Turn"
          unit="°"
          value={turnDegrees}
          min={-360}
          max={360}
          onChange={(degrees) => edit((s) => turnSubject(s, id, degrees))}
        />
        <NumberField
          label="Tilt back"
          unit="°"
          value={tiltDegrees}
          min={-180}
          max={180}
          onChange={(degrees) => edit((s) => leanSubject(s, id, { tiltDegrees: degrees }))}
        />
        <NumberField
          label="Roll right"
          unit="°"
          value={rollDegrees}
          min={-180}
          max={180}
          onChange={(degrees) => edit((s) => leanSubject(s, id, { rollDegrees: degrees }))}
        />
      </div>
    </section>
  );
};
