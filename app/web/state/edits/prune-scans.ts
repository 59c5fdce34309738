import type { Setup } from '../../../../core/setup/schema/setup.ts';

/** The setup without scans that no part shows. */
export const pruneScans = (setup: Setup): Setup => {
  if (setup.scans.length === 0) return setup;
  const used = new Set(
    setup.subjects.flatMap(({ parts }) => parts.flatMap((part) => (part.kind === 'scan' ? [part.scanId] : []))),
  );
  const scans = setup.scans.filter(({ id }) => used.has(id));
  return scans.length === setup.scans.length ? setup : { ...setup, scans };
};
