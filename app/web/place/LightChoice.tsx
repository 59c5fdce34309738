import { useRef } from 'react';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { plainAir } from '../../../core/world/sky-of-place.ts';
import { useApp } from '../state/app-store.ts';
import { type PlaceSky, setPlace } from '../state/edits/place-and-hour-edits.ts';

/** Whether the picture has the sky of its hour, or plain light that is stated. */
export const LightChoice = ({ place: { sky } }: { place: Setup['place'] }) => {
  const { edit } = useApp.getState();
  // what was typed is there again when the sky is
  const last = useRef<PlaceSky>(plainAir);
  if (sky) last.current = sky;
  return (
    <div className="choices" role="group" aria-label="Light without lamps">
      <button
        type="button"
        aria-pressed={sky !== null}
        onClick={() => edit((s) => setPlace(s, { sky: s.place.sky ?? last.current }))}
      >
        Sky of that hour
      </button>
      <button type="button" aria-pressed={sky === null} onClick={() => edit((s) => setPlace(s, { sky: null }))}>
        Plain sky
      </button>
    </div>
  );
};
