/** A box on the page, in any unit. */
export interface Box {
  readonly left: number;
  readonly top: number;
}

/** Boxes whose tops differ by less than this are on one line. */
const sameLine = 4;

/** The next box up or down: on the nearest line that way, the one most nearly straight above or below. */
const nextLine = (boxes: readonly Box[], from: Box, way: 1 | -1): number => {
  const beyond = boxes.filter(({ top }) => way * (top - from.top) > sameLine);
  const line = Math.min(...beyond.map(({ top }) => way * top));
  const onLine = beyond.filter(({ top }) => way * top - line < sameLine);
  const aside = ({ left }: Box) => Math.abs(left - from.left);
  const best = onLine.reduce<Box | null>((least, box) => (!least || aside(box) < aside(least) ? box : least), null);
  return best ? boxes.indexOf(best) : -1;
};

/**
 * Which of the boxes, which stand in reading order, a key leads to from one of them.
 *
 * @returns -1 when it leads nowhere
 */
export const tileToward = (boxes: readonly Box[], at: number, key: string): number => {
  const from = boxes[at];
  if (!from) return -1;
  const last = boxes.length - 1;
  switch (key) {
    case 'ArrowRight':
      return at < last ? at + 1 : -1;
    case 'ArrowLeft':
      return at - 1;
    case 'Home':
      return 0;
    case 'End':
      return last;
    case 'ArrowUp':
      return nextLine(boxes, from, -1);
    case 'ArrowDown':
      return nextLine(boxes, from, 1);
    default:
      return -1;
  }
};
