import { presetOf } from '../../../core/setup/finish-presets.ts';
import { groundPresets, reliefPresets } from '../../../core/setup/ground-presets.ts';
import { trianglesOfRelief } from '../../../core/setup/relief-detail.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { addRelief, maxReliefs, reliefLabel, setGroundFinish, setWholeGround } from '../state/edits/ground-edits.ts';
import { Drop } from '../ui/Drop.tsx';
import { Slip } from '../ui/Slip.tsx';
import { useRowKeys } from '../ui/use-row-keys.ts';
import { FinishFields } from './FinishFields.tsx';
import { ReliefRow } from './ReliefRow.tsx';

/** The surface under everything as a strip that opens: its finish, and what lies on it. */
export const GroundSlip = () => {
  const { ground } = useSetup();
  const scheme = useScheme();
  const isOpen = useApp((state) => state.selection?.kind === 'ground');
  // reliefs have no ids; when one goes, the next is not to stand open in its place
  const keys = useRowKeys(ground.relief);
  const { edit, select } = useApp.getState();
  const triangles = ground.relief.reduce((sum, relief) => sum + trianglesOfRelief(relief), 0);
  const what = [presetOf(ground.finish)?.label ?? 'Own finish', ...ground.relief.map(reliefLabel)];
  const head = (
    <>
      <svg viewBox="0 0 14 14" width={12} height={12} aria-hidden="true">
        <path d="M0 10Q3 7 7 10T14 9M0 13H14" />
      </svg>
      <strong>Ground</strong>
      <span>{[...new Set(what)].join(' · ')}</span>
    </>
  );
  return (
    <Slip head={head} isOpen={isOpen} onToggle={() => select(isOpen ? null : { kind: 'ground' })}>
      <fieldset className="whole-ground">
        <legend className="quiet">The whole ground</legend>
        <div className="choices">
          {groundPresets.map((preset) => (
            <button key={preset.label} type="button" onClick={() => edit((s) => setWholeGround(s, scheme.id, preset))}>
              {preset.label}
            </button>
          ))}
        </div>
      </fieldset>
      <FinishFields finish={ground.finish} onChange={(finish, run) => edit((s) => setGroundFinish(s, finish), run)} />
      {ground.relief.map((relief, index) => (
        <ReliefRow key={keys[index]} relief={relief} index={index} schemeId={scheme.id} />
      ))}
      <div className="actions">
        <Drop label="Add relief" listLabel="Add relief" closesOnPress>
          {reliefPresets.map((preset) => (
            <button
              key={preset.id}
              type="button"
              disabled={ground.relief.length >= maxReliefs}
              onClick={() => edit((s) => addRelief(s, scheme.id, preset))}
            >
              {preset.label}
            </button>
          ))}
        </Drop>
        {triangles > 0 && <span className="quiet">{triangles.toLocaleString('en')} triangles at most</span>}
      </div>
    </Slip>
  );
};
