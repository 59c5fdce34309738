import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { changeSky, type PlaceSky } from '../state/edits/place-and-hour-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { clearnessWord, cloudWord, darknessWord } from '../ui/sky-words.ts';
import { HazeField } from './HazeField.tsx';

/** How dark the site is and how clear its air. */
export const SkyFields = ({ place, sky }: { place: Setup['place']; sky: PlaceSky }) => {
  const { edit } = useApp.getState();
  const set = (part: Partial<PlaceSky>) => edit((s) => changeSky(s, part));
  return (
    <>
      <div className="fields two">
        <NumberField
          label={`Darkness · ${darknessWord(sky.zenithMagnitude)}`}
          unit="mag/arcsec²"
          value={sky.zenithMagnitude}
          min={16}
          max={22.2}
          step={0.1}
          onChange={(to) => set({ zenithMagnitude: to })}
        />
        <NumberField
          label={`Air · ${clearnessWord(sky.extinctionMagnitudes)}`}
          unit="mag"
          value={sky.extinctionMagnitudes}
          min={0.08}
          max={0.8}
          step={0.02}
          onChange={(to) => set({ extinctionMagnitudes: to })}
        />
        <NumberField
          label={`High cloud · ${cloudWord(sky.thinCloudDepth)}`}
          unit=""
          value={sky.thinCloudDepth}
          min={0}
          max={2}
          step={0.1}
          onChange={(to) => set({ thinCloudDepth: to })}
        />
        <HazeField place={place} />
      </div>
      <p className="quiet">
        Darkness: what a meter reads straight up without moon, away from the Milky Way; more is darker. Air: light of a
        star lost straight up. High cloud: its optical depth.
      </p>
    </>
  );
};
