import { apply } from '../../../core/colour/matrix.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { bodyFromWay } from '../../../core/sky/frames-body.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyBody, SkyState } from '../../../core/sky/sky-state.ts';
import { hourInputOf } from '../../../core/world/sky-of-place.ts';

type Place = Setup['place'];

/** Where sun, moon and Milky Way stand at the hour of a place, whatever lights its picture. */
export interface Hour {
  readonly sky: SkyState;
  /** Centre of the Milky Way. */
  readonly core: SkyBody;
}

const read = (place: Place): Hour | null => {
  const input = hourInputOf(place);
  if (!input) return null;
  const sky = skyAt(input);
  const core = bodyFromWay(apply(sky.worldFromGalactic, [1, 0, 0]), input.northRadians);
  return { sky, core };
};

const kept = new WeakMap<Place, Hour | null>();

/** The sky at the hour of a place, worked out once for each. Null where this machine does not know the zone. */
export const hourOf = (place: Place): Hour | null => {
  const known = kept.get(place);
  if (known !== undefined) return known;
  const hour = read(place);
  kept.set(place, hour);
  return hour;
};
