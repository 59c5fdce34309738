import type { Page } from 'playwright-core';
import type { DragTimes } from '../browser/harness/bench-moved-subject.ts';
import type { Harness } from '../browser/harness/main.ts';

/** Drags a subject over 30,000 triangles; small, for software GL. */
export const dragTimes = (page: Page): Promise<DragTimes> =>
  page.evaluate(() =>
    (window as unknown as { harness: Harness }).harness.movedSubject(30_000, { width: 320, height: 180 }, 30),
  );

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

export const dragLine = ({ triangles, width, height, frameMs, stageMs }: DragTimes): string => {
  const share = frameMs.filter((ms) => ms < 33).length / frameMs.length;
  return `Dragged subject, ${triangles} triangles, ${width} x ${height}: ${middle(frameMs).toFixed(1)} ms a frame (the stage ${middle(stageMs).toFixed(1)} ms), ${(100 * share).toFixed(0)} % under 33 ms (bar, on a graphics card: 60 %)`;
};
