import { plainAir } from '../../../core/world/sky-of-place.ts';
import { useApp } from '../state/app-store.ts';
import { documentKeyOf } from '../state/document-key.ts';
import { type PlaceSky, setPlace } from '../state/edits/place-and-hour-edits.ts';

/** What was typed for a sky that was put away, and of which document. */
let putAway: { readonly document: string; readonly sky: PlaceSky } | null = null;

/** Lights the picture by the sky of its hour; with the numbers that were typed before, where there were any. */
export const takeHourSky = (): void => {
  const state = useApp.getState();
  const last = putAway?.document === documentKeyOf(state) ? putAway.sky : plainAir;
  state.edit((setup) => setPlace(setup, { sky: setup.place.sky ?? last }));
};

/** Lights the picture by the plain light that is stated. */
export const takePlainSky = (): void => {
  const state = useApp.getState();
  const { sky } = state.history.present.place;
  if (sky) putAway = { document: documentKeyOf(state), sky };
  state.edit((setup) => setPlace(setup, { sky: null }));
};
