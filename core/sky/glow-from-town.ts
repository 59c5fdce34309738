/** Luminance ten degrees up for each million people (1000 lm each), by distance: our own march of Garstang's model (sky.md 4.7). */
const rows: readonly (readonly [distanceKm: number, cdM2: number])[] = [
  [15, 8.8e-2],
  [20, 4.6e-2],
  [40, 6.8e-3],
  [60, 1.83e-3],
  [100, 2.9e-4],
];
/** Nearer and farther the last slopes go on to here, and then the value is held: no model holds there. */
const nearestKm = 8;
const farthestKm = 250;

/**
 * Luminance that a town's glow has ten degrees above the horizon at its bearing, cd/m2.
 *
 * Meant for 15 to 100 km, where it follows Walker's law within a factor of 2 (tests/reference/sky); towns differ by more
 * than that in light per head. Between rows the logarithm goes evenly with that of distance.
 *
 * @param population people, 0 or more
 * @param distanceKm to the middle of the town
 */
export const glowFromTown = (population: number, distanceKm: number): number => {
  const distance = Math.min(Math.max(distanceKm, nearestKm), farthestKm);
  const next = rows.findIndex(([km], i) => i > 0 && distance <= km);
  const k = next < 0 ? rows.length - 1 : next;
  const [fromKm, from] = rows[k - 1] as (typeof rows)[number];
  const [toKm, to] = rows[k] as (typeof rows)[number];
  const power = Math.log(to / from) / Math.log(toKm / fromKm);
  return (population / 1e6) * from * (distance / fromKm) ** power;
};
