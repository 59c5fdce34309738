import type { StageSubject } from '../../../core/world/stage.ts';
import { footprintAreaOf } from './footprint.ts';
import { type PlanView, planHalf } from './plan-view.ts';

/** Share of the drawing that land covers at least. */
const landShare = 0.25;

/**
 * Whether a subject is land that the rest stands on, such as a hill: it covers a good part of the drawing. Its shadow on
 * level ground would hide all else and says nothing.
 */
export const isLand = ({ unitsPerMetre }: PlanView, subject: StageSubject): boolean =>
  footprintAreaOf(subject) * unitsPerMetre ** 2 > landShare * (2 * planHalf) ** 2;
