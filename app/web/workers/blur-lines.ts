import { viewDirection } from '../../../core/camera/camera-view.ts';
import { dot } from '../../../core/geometry/vec.ts';
import { sharpestBlur } from '../../../core/readings/blur-reading.ts';
import type { Camera, Frame } from '../../../core/setup/schema/setup.ts';
import { surfaceAlong } from '../../../core/trace/surface-point.ts';
import type { World } from '../../../core/world/world.ts';
import { type ContourPoint, contoursOf, type Place } from './contours.ts';
import type { BlurLines } from './marks-messages.ts';
import { drawnLine } from './simplify-line.ts';

/** Blurs that lines are drawn for, in pixels of the sensor, like height lines: each twice the one before. */
export const blurSteps = [1, 2, 4, 8] as const;

/** Looks across the picture; down it as many as its shape asks for. */
const columns = 240;
/** Lines shorter than this share of the picture's width are specks. */
const leastLength = 0.03;
/** So many lines of a blur have its number: the longest, and another that is so long; before and behind the focus, say. */
const [mostLabels, labelledLength] = [2, 0.2];

/** The pieces of a ring that do not run along the picture's own edge. */
const innerRuns = (ring: readonly ContourPoint[]): Place[][] => {
  const runs: Place[][] = [];
  let run: Place[] = [];
  const end = () => {
    if (run.length > 1) runs.push(run);
    run = [];
  };
  for (const { place, inside } of ring) {
    if (inside === null) end();
    else run.push(place);
  }
  end();
  // a ring that lies wholly within begins and ends at one place; one that was cut there goes on from its end
  const [first, last] = [runs[0], runs.at(-1)];
  const isCut = runs.length > 1 && ring[0]?.inside && ring.at(-1)?.inside;
  return first && last && isCut ? [[...last, ...first.slice(1)], ...runs.slice(1, -1)] : runs;
};

const lengthOf = (line: readonly Place[], aspect: number): number =>
  line.slice(1).reduce((sum, [x, y], i) => {
    const [px, py] = line[i] as Place;
    return sum + Math.hypot(x - px, (y - py) / aspect);
  }, 0);

/** Half-way along a line. */
const middleOf = (line: readonly Place[]): Place => line[Math.floor(line.length / 2)] as Place;

/**
 * Lines of equal blur over a scheme's picture, where what is seen there leaves the depth of field of all frames that are
 * shown. The sky is as far as the stars.
 */
export const blurLines = ({ stage, view, aspect }: World, camera: Camera, frames: readonly Frame[]): BlurLines[] => {
  const blur = sharpestBlur(camera, frames);
  if (!blur) return [];
  const rows = Math.max(Math.round(columns / aspect), 1);
  const blurAt = ([x, y]: Place): number => {
    const direction = viewDirection(view, x, y);
    const seen = surfaceAlong(stage, view.position, direction);
    return blur(seen ? seen.distance * dot(direction, view.forward) : Number.POSITIVE_INFINITY);
  };
  const cells = Float64Array.from({ length: columns * rows }, (_, cell) =>
    blurAt([((cell % columns) + 0.5) / columns, (Math.floor(cell / columns) + 0.5) / rows]),
  );
  return blurSteps.map((pixels) => {
    const mask = { columns, rows, has: (cell: number) => (cells[cell] as number) > pixels };
    const runs = contoursOf(mask, (place) => blurAt(place) > pixels)
      .flatMap(innerRuns)
      .filter((run) => lengthOf(run, aspect) >= leastLength)
      .sort((a, b) => lengthOf(b, aspect) - lengthOf(a, aspect));
    const told = runs.filter((run, r) => r < mostLabels && (r === 0 || lengthOf(run, aspect) >= labelledLength));
    return { pixels, lines: runs.map(drawnLine), labels: told.map(middleOf) };
  });
};
