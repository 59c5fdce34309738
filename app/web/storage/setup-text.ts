import type { Setup } from '../../../core/setup/schema/setup.ts';

/** How deep lists are written item by item: the parts of subjects, the frames of schemes. */
const depth = 4;

const known = new WeakMap<object, string>();

/** JSON of a value. Objects are written once: an edit leaves most of a setup as it was. */
const write = (value: unknown, levels: number): string => {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const before = known.get(value);
  if (before !== undefined) return before;
  const text = levels === 0 ? JSON.stringify(value) : writeInside(value, levels - 1);
  known.set(value, text);
  return text;
};

const writeInside = (value: object, levels: number): string => {
  if (Array.isArray(value)) return `[${value.map((item) => write(item, levels)).join()}]`;
  const fields = Object.entries(value).filter(([, field]) => field !== undefined);
  return `{${fields.map(([key, field]) => `${JSON.stringify(key)}:${write(field, levels)}`).join()}}`;
};

/**
 * The JSON of a setup on one line, the data of its scans left empty. Takes time for what changed only, so that a setup of
 * megabytes can be written while a lamp is dragged.
 */
export const setupText = (setup: Setup): string => {
  const scans = setup.scans.map((scan) => ({ ...scan, data: '' }));
  return writeInside({ ...setup, scans }, depth);
};
