import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { WantedPicture } from '../picture/scene-of.ts';
import type { PlanView } from '../ui/plan-view.ts';

/** A small ground plan, drawn when it is known how large and on what. */
interface SheetPlan {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly view: PlanView;
}

/** One picture of a sheet with what is said about it. */
export interface SheetCell {
  readonly name: string;
  readonly lines: readonly string[];
  readonly plan: SheetPlan | null;
  /** Its `screen` is unique in the sheet; the size comes from the layout. */
  readonly picture: Omit<WantedPicture, 'size'>;
  /** Width over height. */
  readonly aspect: number;
}

interface SheetGroup {
  /** "" for a group that needs no name. */
  readonly name: string;
  readonly cells: readonly SheetCell[];
}

/** Pictures, plans and numbers to be taken out of the page, as plain data. */
export interface Sheet {
  /** Without its ending. */
  readonly fileName: string;
  readonly title: string;
  readonly subtitle: string;
  /** Whether its pictures are maps of levels, whose bands want a key. */
  readonly hasLevelKey: boolean;
  /** Cells side by side where there is room. */
  readonly columns: number;
  readonly groups: readonly SheetGroup[];
  /** Frame shown, or the one like it; null shows the blend. */
  readonly frame: Frame | null;
  /** Samples a pixel gets. */
  readonly samples: number;
}

export const cellsOf = ({ groups }: Sheet): SheetCell[] => groups.flatMap(({ cells }) => cells);
