import type { EvenDose } from '../../../core/passes/even-dose.ts';
import type { Waypoint } from '../../../core/setup/schema/setup.ts';

const placeWords = (place: number): string =>
  Number.isInteger(place) ? `waypoint ${place + 1}` : `between ${Math.floor(place) + 1} and ${Math.ceil(place) + 1}`;

/** From here on dwell alone does not do it. */
const farStops = 1;

/** How even the dose along the aims came out; null once the path is another one. Unlit places are named, three at most. */
export const evenWords = (even: EvenDose, waypoints: readonly Waypoint[]): string | null => {
  if (even.kind !== 'even' || even.waypoints.some((waypoint, i) => waypoint !== waypoints[i])) return null;
  const { spreadStops, spreadBeforeStops, unlit } = even;
  const more = spreadStops > farStops ? ' A narrower beam, or one from farther off, comes out more even.' : '';
  const told = `Dose even within ${spreadStops.toFixed(1)} stops; ${spreadBeforeStops.toFixed(1)} at even speed.${more}`;
  if (unlit.length === 0) return told;
  const named = unlit.slice(0, 3).map(placeWords).join(', ');
  const others = unlit.length > 3 ? ` and ${unlit.length - 3} more` : '';
  return `${told} No dwell lights what you see at ${named}${others}.`;
};
