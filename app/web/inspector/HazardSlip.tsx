import type { Hazard } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { addHazard, moveHazard, removeHazard, renameHazard, resizeHazard } from '../state/edits/hazard-edits.ts';
import { Drop } from '../ui/Drop.tsx';
import { hazardPath } from '../ui/hazard-path.ts';
import { MetresField } from '../ui/MetresField.tsx';
import { Slip } from '../ui/Slip.tsx';
import { TextField } from '../ui/TextField.tsx';
import { useAxisWords } from './axis-words.ts';

/** What is met in the dark; any of them can be renamed. */
const kinds = ['Edge', 'Bog', 'Deep water', 'Loose stones', 'Hole', 'Road'] as const;

const HazardRow = ({ hazard }: { hazard: Hazard }) => {
  const { edit, select } = useApp.getState();
  const { id, name, position, radiusMetres } = hazard;
  const axes = useAxisWords();
  return (
    <fieldset
      className="hazard-row"
      aria-label={`Hazard ${name}`}
      onFocus={() => select({ kind: 'hazard', hazardId: id })}
    >
      <div className="fields">
        <TextField label="Name" value={name} onChange={(to) => edit((s) => renameHazard(s, id, to))} />
        <MetresField
          label={axes.east}
          value={position[0]}
          min={-5000}
          max={5000}
          onChange={(east) => edit((s) => moveHazard(s, id, [east, position[1]]))}
        />
        <MetresField
          label={axes.north}
          value={position[1]}
          min={-5000}
          max={5000}
          onChange={(north) => edit((s) => moveHazard(s, id, [position[0], north]))}
        />
        <MetresField
          label="Reaches"
          value={radiusMetres}
          min={0.5}
          max={500}
          onChange={(metres) => edit((s) => resizeHazard(s, id, metres))}
        />
      </div>
      <button type="button" className="small" onClick={() => edit((s) => removeHazard(s, id))}>
        Delete {name}
      </button>
    </fieldset>
  );
};

/** Where nobody should walk or stand in the dark, as a strip that opens. */
export const HazardSlip = () => {
  const { hazards } = useSetup();
  const scheme = useScheme();
  const isOpen = useApp(({ selection }) => selection?.kind === 'hazard' || selection?.kind === 'hazards');
  const { edit, select } = useApp.getState();
  const add = (kind: string) => {
    let hazardId = '';
    edit((setup) => {
      const added = addHazard(setup, scheme.id, kind);
      hazardId = added.hazardId;
      return added.setup;
    });
    if (hazardId !== '') select({ kind: 'hazard', hazardId });
  };
  const head = (
    <>
      <svg viewBox="-7 -7 14 14" width={12} height={12} aria-hidden="true">
        <path d={hazardPath(6)} />
      </svg>
      <strong>Hazards</strong>
      <span>{hazards.length === 0 ? 'none marked' : hazards.map(({ name }) => name).join(' · ')}</span>
    </>
  );
  return (
    <Slip head={head} isOpen={isOpen} onToggle={() => select(isOpen ? null : { kind: 'hazards' })}>
      {hazards.map((hazard) => (
        <HazardRow key={hazard.id} hazard={hazard} />
      ))}
      <div className="actions">
        <Drop label="Mark a hazard" listLabel="Mark a hazard" closesOnPress>
          {kinds.map((kind) => (
            <button key={kind} type="button" onClick={() => add(kind)}>
              {kind}
            </button>
          ))}
        </Drop>
      </div>
      <p className="quiet">
        Walks keep off them where they can. Mark what you saw by day, and ask who knows the place.
      </p>
    </Slip>
  );
};
