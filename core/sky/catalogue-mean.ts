/** Mean light of catalogue stars to V = 8, S10, at the middles of bands of galactic latitude, degrees. */
const rows: readonly (readonly [latitude: number, s10: number])[] = [
  [0, 57],
  [1.5, 56],
  [4.5, 52],
  [8, 57],
  [12.5, 39],
  [17.5, 37],
  [25, 33],
  [45, 22],
  [90, 22],
];

/**
 * Mean light of the stars that a catalogue to V = 8 has, S10: what a picture that draws them as points must leave out of
 * its band. Source: counted from the catalogue (XHIP, by way of d3-celestial 0.7.35), read in straight lines.
 *
 * @param latitudeDegrees galactic latitude
 */
export const catalogueMeanS10 = (latitudeDegrees: number): number => {
  const b = Math.abs(latitudeDegrees);
  let [from, before] = rows[0] as readonly [number, number];
  for (const [to, after] of rows) {
    if (b <= to) return to > from ? before + ((after - before) * (b - from)) / (to - from) : after;
    [from, before] = [to, after];
  }
  return before;
};
