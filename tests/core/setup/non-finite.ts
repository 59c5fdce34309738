/** Paths of numbers inside a value that are not finite, typed arrays included. */
export const nonFinite = (value: unknown, path = ''): string[] => {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} = ${value}`];
  if (ArrayBuffer.isView(value)) {
    const bad = (value as Float64Array).findIndex((each) => !Number.isFinite(each));
    return bad < 0 ? [] : [`${path}[${bad}] = ${(value as Float64Array)[bad]}`];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, child]) => nonFinite(child, `${path}.${key}`));
};
