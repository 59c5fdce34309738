import type { SweepKind, SweepPlan } from '../../../core/sweep/sweep-plan.ts';

/** What a sweep is called. */
export const kindWords: Readonly<Record<SweepKind, string>> = {
  angles: 'Round the clock',
  heights: 'Heights',
  distances: 'Distances',
  gels: 'Gels',
  ratios: 'Ratio',
};

/** What changes from picture to picture, and what stays. */
export const kindSentences: Readonly<Record<SweepKind, string>> = {
  angles: 'The lamp walks round its aim from six o’clock, at its level distance. Level and count stay.',
  heights: 'The lamp is raised where it stands. Level and count stay.',
  distances: 'The lamp moves along its bearing. Level and count keep the dose at the target.',
  gels: 'Gels in place of the present ones. Level and count stay, so that what a gel costs shows.',
  ratios: 'The lamp as the fill: so many stops under the strongest other lamp of its frame.',
};

/** What a cell is taken over by. */
export const takeWords: Readonly<Record<SweepKind, string>> = {
  angles: 'Move the lamp here',
  heights: 'Move the lamp here',
  distances: 'Move the lamp here',
  gels: 'Use this gel',
  ratios: 'Use this level',
};

/** How many pictures a plan asks for. */
export const cellsOf = (plan: SweepPlan): number => {
  switch (plan.kind) {
    case 'angles':
      return plan.steps * plan.heightsMetres.length;
    case 'heights':
      return plan.heightsMetres.length;
    case 'distances':
      return plan.distancesMetres.length;
    case 'gels':
      return plan.gels.length;
    case 'ratios':
      return plan.stops.length;
  }
};

/** "1 picture", "36 pictures". */
export const picturesText = (count: number): string => (count === 1 ? '1 picture' : `${count} pictures`);
