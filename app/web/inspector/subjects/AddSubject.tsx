import { useRef } from 'react';
import { allKits } from '../../../../core/kits/all-kits.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { addKitSubject, addPartSubject, type WithSubject } from '../../state/edits/add-subjects.ts';
import { newPartKinds, partWords } from '../../state/edits/new-parts.ts';
import { useSession } from '../../state/session.ts';
import { Drop } from '../../ui/Drop.tsx';
import { FilePicker } from '../../ui/FilePicker.tsx';
import { showOpenSlip } from './show-open-slip.ts';

/** Puts another subject where the camera looks. */
export const AddSubject = ({ schemeId }: { schemeId: string }) => {
  const { edit, select } = useApp.getState();
  const picker = useRef<HTMLInputElement>(null);
  const add = (make: (setup: Setup) => WithSubject) => {
    let subjectId: string | null = null;
    edit((setup) => {
      const made = make(setup);
      subjectId = made.subjectId;
      return made.setup;
    });
    if (subjectId === null) return;
    select({ kind: 'subject', subjectId });
    showOpenSlip();
  };
  return (
    <Drop label="Add" className="drop add-subject" listLabel="Add a subject" closesOnPress staysInside>
      {allKits.length > 0 && <h3>From a few numbers</h3>}
      {allKits.map(({ name, label, says }) => (
        <button
          key={name}
          type="button"
          className="kit-button"
          onClick={() => add((setup) => addKitSubject(setup, schemeId, name))}
        >
          <span>{label}</span>
          <span className="quiet">{says}</span>
        </button>
      ))}
      <h3>From a scan</h3>
      <button type="button" className="kit-button" onClick={() => picker.current?.click()}>
        <span>A file from your phone or computer…</span>
        <span className="quiet">GLB, glTF, OBJ or PLY; it stays on this machine</span>
      </button>
      <FilePicker
        label="Scan file"
        accept=".glb,.gltf,.obj,.ply"
        picker={picker}
        onFile={(scanFile) => useSession.getState().set({ scanFile })}
      />
      <h3>Part by part</h3>
      <div className="add-parts">
        {newPartKinds.map((kind) => (
          <button key={kind} type="button" onClick={() => add((setup) => addPartSubject(setup, schemeId, kind))}>
            {partWords[kind]}
          </button>
        ))}
      </div>
    </Drop>
  );
};
