import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { changeSubject } from './subject-edits.ts';
import { withinLimits } from './subject-limits.ts';

/** Least and largest scale that the document takes. */
const [leastScale, largestScale] = [0.001, 1000];

/** Makes the scans of a subject larger, so that a length of `measuredMetres` becomes `realMetres`. Throws `EditRefused`. */
export const scaleScan = (setup: Setup, subjectId: string, measuredMetres: number, realMetres: number): Setup => {
  const factor = realMetres / measuredMetres;
  if (!Number.isFinite(factor) || factor <= 0) return setup;
  const scaled = changeSubject(setup, subjectId, (scanned) => {
    const parts = scanned.parts.map((part) => {
      if (part.kind !== 'scan') return part;
      const scale = Number((part.scale * factor).toPrecision(6));
      if (scale < leastScale || scale > largestScale)
        throw new EditRefused(
          `That would make the scan ${scale} times its size; from ${leastScale} to ${largestScale} is taken.`,
        );
      return { ...part, scale };
    });
    return { ...scanned, parts };
  });
  return withinLimits(scaled);
};
