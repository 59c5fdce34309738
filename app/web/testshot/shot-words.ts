/** "0.8 stop", "1.0 stop", "2.3 stops". */
export const stopsText = (stops: number): string => {
  const text = Math.abs(stops).toFixed(1);
  return `${text} ${Number(text) > 1 ? 'stops' : 'stop'}`;
};

/** "The photo is 0.8 stop darker here than predicted (±0.3)." */
export const differenceWords = (differenceStops: number, uncertaintyStops: number): string => {
  const doubt = `(±${Math.max(uncertaintyStops, 0.1).toFixed(1)})`;
  if (Math.abs(differenceStops) < 0.05) return `The photo is as bright here as predicted ${doubt}.`;
  const way = differenceStops < 0 ? 'darker' : 'brighter';
  return `The photo is ${stopsText(differenceStops)} ${way} here than predicted ${doubt}.`;
};

/** "0.1 stop is within what can be measured here (±0.2): the lamp may stay as it is." */
export const withinDoubtWords = (movedStops: number, uncertaintyStops: number): string =>
  `${stopsText(movedStops)} is within what can be measured here (±${uncertaintyStops.toFixed(1)}): the lamp may stay as it is.`;

/** "57 %", "120 %". */
export const shareOfBoxText = (stops: number): string => {
  const percent = 100 * 2 ** stops;
  return `${percent < 10 ? percent.toFixed(1) : Math.round(percent)} %`;
};

/** "Your “Torch” gives 57 % of what its box says." */
export const lampWords = (name: string, stops: number): string =>
  `Your “${name}” gives ${shareOfBoxText(stops)} of what its box says.`;
