import type { Relief } from '../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import {
  beforeCamera,
  changeRelief,
  nextOfRelief,
  reliefLabel,
  removeRelief,
  roundCamera,
  roundSubject,
} from '../state/edits/ground-edits.ts';
import { worded } from '../ui/lengths.ts';
import { MetresField } from '../ui/MetresField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { FinishFields } from './FinishFields.tsx';
import { Fold } from './parts/Fold.tsx';
import { SheetFields, StrewnFields } from './ReliefNumbers.tsx';

interface ReliefRowProps {
  readonly relief: Relief;
  readonly index: number;
  readonly schemeId: string;
}

/** One relief of the ground, folded away under its name. */
export const ReliefRow = ({ relief, index, schemeId }: ReliefRowProps) => {
  const setup = useSetup();
  const { edit } = useApp.getState();
  const put = (next: Relief, run?: string) => edit((s) => changeRelief(s, index, next), run);
  const [east, north] = relief.centre;
  return (
    <Fold title={reliefLabel(relief)} note={worded(`within ${Number(relief.radiusMetres.toFixed(1))} m`)}>
      {'count' in relief ? <StrewnFields relief={relief} put={put} /> : <SheetFields relief={relief} put={put} />}
      <div className="fields">
        <MetresField
          label="Radius"
          value={relief.radiusMetres}
          min={0.1}
          max={500}
          onChange={(radiusMetres) => put({ ...relief, radiusMetres })}
        />
        <MetresField
          label="Middle, east"
          value={east}
          min={-5000}
          max={5000}
          onChange={(to) => put({ ...relief, centre: [to, north] })}
        />
        <MetresField
          label="Middle, north"
          value={north}
          min={-5000}
          max={5000}
          onChange={(to) => put({ ...relief, centre: [east, to] })}
        />
        <span className="seed">
          <NumberField
            label="Variant"
            unit=""
            value={relief.seed}
            min={0}
            max={4294967295}
            digits={0}
            onChange={(seed) => put({ ...relief, seed: Math.round(seed) })}
          />
          <button
            type="button"
            title="The same numbers, laid out another way"
            onClick={() => put(nextOfRelief(relief))}
          >
            Another
          </button>
        </span>
      </div>
      <div className="actions">
        <button type="button" onClick={() => put({ ...relief, centre: roundSubject(setup, schemeId) })}>
          Round the subject
        </button>
        <button type="button" onClick={() => put({ ...relief, centre: beforeCamera(setup, schemeId) })}>
          Between camera and subject
        </button>
        <button type="button" onClick={() => put({ ...relief, centre: roundCamera(setup, schemeId) })}>
          Round the camera
        </button>
      </div>
      <FinishFields
        finish={relief.finish ?? setup.ground.finish}
        onChange={(finish, run) => put({ ...relief, finish }, run)}
        inherits={{
          label: 'As the ground',
          isInherited: relief.finish === null,
          onInherit: () => put({ ...relief, finish: null }),
        }}
      />
      <div className="actions">
        <button type="button" onClick={() => edit((s) => removeRelief(s, index))}>
          Remove {reliefLabel(relief).toLowerCase()}
        </button>
      </div>
    </Fold>
  );
};
