import type { Setup, Subject } from '../../../core/setup/schema/setup.ts';
import { measuredLength } from '../../../core/units/measured-length.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { type Tape, useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { worded } from '../ui/lengths.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { tapeWords } from '../ui/tape-words.ts';
import { setTrueLength } from './true-length.ts';

/** The selected subject, where it is a scan whose size a measured length can set right. */
const selectedScan = ({ subjects }: Setup, subjectId: string | null): Subject | null =>
  subjects.find(({ id, parts }) => id === subjectId && parts.every(({ kind }) => kind === 'scan')) ?? null;

/** Sets a selected scan to its real size by what the tape measures on it. */
const RealLength = ({ tape, scan }: { tape: Tape; scan: Subject }) => {
  if (!tape.from || !tape.to) return null;
  const { from, to } = tape;
  const { metres } = measuredLength(from, to);
  if (metres < 0.01) return null;
  return (
    <NumberField
      label={`Really, on ${scan.name}`}
      unit="m"
      value={metres}
      min={0.01}
      max={5000}
      onChange={(real) => setTrueLength(scan, from, to, real)}
    />
  );
};

/** Takes the measuring tape out and puts it away, says what it measures; and whether ways on foot are drawn. */
export const TapeBar = () => {
  const setup = useSetup();
  const tape = useSession((state) => state.tape);
  const showsWalks = useSession((state) => state.showsWalks);
  const { set } = useSession.getState();
  const scan = useApp(({ selection }) =>
    selectedScan(setup, selection?.kind === 'subject' ? selection.subjectId : null),
  );
  return (
    <div className="tape-bar">
      <button
        type="button"
        className="small"
        aria-pressed={tape !== null}
        title="Measure between two places"
        onClick={() => set({ tape: tape ? null : { from: null, to: null } })}
      >
        Measure
      </button>
      <span title="The ways on foot: from the camera to the first pass, from pass to pass, and back">
        <Check label="Walks" isOn={showsWalks} onChange={(isOn) => set({ showsWalks: isOn })} />
      </span>
      {tape && (
        <span role="status" title={worded(`A pace is ${setup.walking.paceMetres} m`)}>
          {tapeWords(tape, setup.walking.paceMetres)}
        </span>
      )}
      {tape && scan && <RealLength tape={tape} scan={scan} />}
    </div>
  );
};
