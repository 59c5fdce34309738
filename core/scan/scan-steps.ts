/** Size of a box as the document has it: [east to west, north to south, height], metres. */
type SizeMetres = readonly [number, number, number];

/** Most steps across the box; corners lie on them. */
const steps = 65535;

/** World axes of the box: where it starts and how far it goes. */
const boxOf = ([east, north, up]: SizeMetres) => ({
  low: [-east / 2, 0, -north / 2] as const,
  size: [east, up, north] as const,
});

/** Size of the box round corners in world axes, in the document's order: [east to west, north to south, height]. */
export const scanSizeMetres = (positions: Float64Array): [number, number, number] => {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (let i = 0; i < positions.length; i++) {
    const value = positions[i] as number;
    const axis = i % 3;
    if (value < (low[axis] as number)) low[axis] = value;
    if (value > (high[axis] as number)) high[axis] = value;
  }
  const [x, y, z] = low.map((value, axis) => (high[axis] as number) - value) as [number, number, number];
  return [x, z, y];
};

/**
 * Puts corners on the steps of their box: each moves by half a step at most.
 *
 * @param positions world axes, metres, three numbers a corner
 */
export const stepsFromMetres = (positions: Float64Array, sizeMetres: SizeMetres): Uint16Array => {
  const { low, size } = boxOf(sizeMetres);
  const onSteps = new Uint16Array(positions.length);
  for (let i = 0; i < positions.length; i++) {
    const extent = size[i % 3] as number;
    const share = extent > 0 ? ((positions[i] as number) - (low[i % 3] as number)) / extent : 0;
    onSteps[i] = Math.min(Math.max(Math.round(share * steps), 0), steps);
  }
  return onSteps;
};

/** Where corners on the steps of a box are, in world axes, metres. */
export const metresFromSteps = (places: Uint16Array, sizeMetres: SizeMetres): Float64Array => {
  const { low, size } = boxOf(sizeMetres);
  const positions = new Float64Array(places.length);
  for (let i = 0; i < places.length; i++)
    positions[i] = (low[i % 3] as number) + ((places[i] as number) / steps) * (size[i % 3] as number);
  return positions;
};

/** Where the box is flat all steps are one place: puts its corners on the first. */
export const joinFlatSteps = (places: Uint16Array, sizeMetres: SizeMetres): void => {
  const extents = boxOf(sizeMetres).size;
  if (extents.includes(0)) for (let i = 0; i < places.length; i++) if (extents[i % 3] === 0) places[i] = 0;
};

/** Whether corners on the steps lie on one line; exact, as whole numbers under 2^34. */
export const isLine = (places: Uint16Array, a: number, b: number, c: number): boolean => {
  const ux = (places[b * 3] as number) - (places[a * 3] as number);
  const uy = (places[b * 3 + 1] as number) - (places[a * 3 + 1] as number);
  const uz = (places[b * 3 + 2] as number) - (places[a * 3 + 2] as number);
  const vx = (places[c * 3] as number) - (places[a * 3] as number);
  const vy = (places[c * 3 + 1] as number) - (places[a * 3 + 1] as number);
  const vz = (places[c * 3 + 2] as number) - (places[a * 3 + 2] as number);
  return uy * vz === uz * vy && uz * vx === ux * vz && ux * vy === uy * vx;
};
