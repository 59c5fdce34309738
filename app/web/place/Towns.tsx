import { useId } from 'react';
import type { Camera } from '../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { addGlowDome, mostGlowDomes } from '../state/edits/glow-dome-edits.ts';
import { useRowKeys } from '../ui/use-row-keys.ts';
import { aimBearing } from './aim-bearing.ts';
import { TownRow } from './TownRow.tsx';

/** Glow of towns over the horizon: what black outlines stand against. */
export const Towns = ({ camera }: { camera: Camera }) => {
  const { place } = useSetup();
  const { edit } = useApp.getState();
  const heading = useId();
  const keys = useRowKeys(place.glowDomes);
  return (
    <section className="towns" aria-labelledby={heading}>
      <h3 id={heading} className="quiet">
        Glow of towns
      </h3>
      {place.glowDomes.map((dome, index) => (
        <TownRow key={keys[index]} dome={dome} index={index} />
      ))}
      <div className="actions">
        <button
          type="button"
          disabled={place.glowDomes.length >= mostGlowDomes}
          onClick={() => edit((s) => addGlowDome(s, aimBearing(camera, place.northDegrees)))}
        >
          Add a town
        </button>
        {place.glowDomes.length === 0 && (
          <span className="quiet">
            No town glows over the horizon: outlines there have only the night sky behind them.
          </span>
        )}
      </div>
    </section>
  );
};
