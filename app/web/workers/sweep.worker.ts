import { readCell } from '../../../core/sweep/read-cell.ts';
import { setupKeeper } from './request-parts.ts';
import type { CellAnswer, CellRequest } from './sweep-messages.ts';

const setupOf = setupKeeper();

self.onmessage = ({ data }: MessageEvent<CellRequest>) => {
  const { id, place, cell } = data;
  const answer: CellAnswer = { id, ...readCell(setupOf(data), place, cell) };
  self.postMessage(answer);
};
