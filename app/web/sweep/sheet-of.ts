import type { SweepCell } from '../../../core/sweep/cell.ts';
import { passAt } from '../../../core/sweep/pass-at.ts';
import type { SweepRun } from '../state/sweeps.ts';
import type { CellReading } from '../workers/sweep-messages.ts';
import { cautionText, cellLines, placeWords } from './cell-words.ts';
import { kindWords } from './kind-words.ts';

/** A sheet of pictures in words, to be drawn on screen, on paper or in a file. */
export interface SheetDescription {
  readonly title: string;
  readonly groups: readonly {
    readonly name: string;
    readonly cells: readonly {
      /** Name of the screen that its picture is on. */
      readonly screen: string;
      readonly name: string;
      readonly lines: readonly string[];
    }[];
  }[];
}

/** Name of the screen that a cell's picture is on. */
export const screenOf = ({ id }: SweepCell): string => `sweep/${id}`;

/** Cells that follow each other with the same row, in order. */
export const groupsOf = (cells: readonly SweepCell[]): { name: string; cells: SweepCell[] }[] => {
  const groups: { name: string; cells: SweepCell[] }[] = [];
  for (const cell of cells) {
    const last = groups.at(-1);
    if (last?.name === cell.row) last.cells.push(cell);
    else groups.push({ name: cell.row, cells: [cell] });
  }
  return groups;
};

/** "Key · round the clock · Side, low". */
export const sheetTitle = ({ setup, place, plan }: SweepRun): string => {
  const { pass, scheme } = passAt(setup, place);
  return [pass.name, kindWords[plan.kind].toLowerCase(), scheme.name].join(' · ');
};

/** What a sweep shows, with its numbers as far as they have been worked out. */
export const sheetOf = ({
  run,
  readings,
}: {
  readonly run: SweepRun;
  readonly readings: Readonly<Record<string, CellReading>>;
}): SheetDescription => ({
  title: sheetTitle(run),
  groups: groupsOf(run.cells).map(({ name, cells }) => ({
    name: placeWords(run.plan.kind, name),
    cells: cells.map((cell) => ({
      screen: screenOf(cell),
      name: placeWords(run.plan.kind, cell.column),
      lines: [
        ...cellLines(run.plan.kind, cell, readings[cell.id]),
        ...(readings[cell.id]?.cautions.map(cautionText) ?? []),
      ],
    })),
  })),
});
