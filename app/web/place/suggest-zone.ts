import { isKnownZone } from '../../../core/sky/zone-offset.ts';

/**
 * Time zone that is likely at a place, loaded when it is first asked for. A suggestion: its makers say that about one in
 * ten inhabited places comes out in a neighbouring zone, half of these with another clock time. At sea it is a zone such
 * as Etc/GMT+3.
 *
 * @returns IANA name; null where there is no such place, and where this browser does not know the zone
 */
export const suggestZone = async (latitudeDegrees: number, longitudeDegrees: number): Promise<string | null> => {
  if (!(Math.abs(latitudeDegrees) <= 90 && Math.abs(longitudeDegrees) <= 180)) return null;
  const { default: zoneAt } = await import('@photostructure/tz-lookup');
  const zone = zoneAt(latitudeDegrees, longitudeDegrees);
  return isKnownZone(zone) ? zone : null;
};
