/** Samples a pixel gets before the picture counts as done; `?samples=` in the address sets another number for tests. */
export const maxSamples = Math.min(
  Math.max(Math.round(Number(new URLSearchParams(location.search).get('samples') ?? 64)) || 64, 1),
  4096,
);
