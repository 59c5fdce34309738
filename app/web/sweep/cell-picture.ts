import type { Frame } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import { passAt } from '../../../core/sweep/pass-at.ts';
import { setupOfCell } from '../../../core/sweep/setup-of-cell.ts';
import type { WantedPicture } from '../picture/scene-of.ts';
import { pixelRatio } from '../render/darkroom.ts';
import type { Size } from '../render/layer-store.ts';
import type { SweepRun } from '../state/sweeps.ts';
import { screenOf } from './sheet-of.ts';

/** Width that the small pictures are traced at, CSS pixels: about that of a tile. */
const tracedWidth = 160;

/** The sensor's width over its height. */
export const aspectOf = ({ setup, place }: SweepRun): number => {
  const { widthMm, heightMm } = passAt(setup, place).camera.sensor;
  return widthMm / heightMm;
};

/** Size that the small pictures of a sweep are traced at: the same for all, whatever their tiles are, so that they share what they can. */
export const tracedSize = (run: SweepRun): Size => {
  const width = Math.round(tracedWidth * pixelRatio());
  return { width, height: Math.max(Math.round(width / aspectOf(run)), 1) };
};

/** The frame that a sweep shows; null = all frames of the scheme, blended. */
export const shownFrame = ({ setup, place, showsBlend }: SweepRun): Frame | null =>
  showsBlend ? null : passAt(setup, place).frame;

/** The picture of a cell. */
export const cellPicture = (
  { setup, place }: SweepRun,
  cell: SweepCell,
  size: Size,
  screen = screenOf(cell),
): WantedPicture => {
  const changed = setupOfCell(setup, place, cell);
  const { scheme } = passAt(changed, place);
  return {
    setup: changed,
    scheme,
    isUnlit: false,
    name: screenOf(cell),
    screen,
    look: 'picture',
    against: null,
    marksFull: false,
    size,
  };
};
