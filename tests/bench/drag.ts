import type { DragTimes } from './page/moved-subject.ts';

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

export const dragLine = ({ triangles, width, height, frameMs, stageMs }: DragTimes): string => {
  const share = frameMs.filter((ms) => ms < 33).length / frameMs.length;
  return `Dragged subject, ${triangles} triangles, ${width} x ${height}: ${middle(frameMs).toFixed(1)} ms a frame (the stage ${middle(stageMs).toFixed(1)} ms), ${(100 * share).toFixed(0)} % under 33 ms (bar, on a graphics card: 60 %)`;
};
