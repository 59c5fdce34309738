import type { FieldCard } from '../field-card.ts';
import type { Page, Shape } from '../sheet/shapes.ts';
import { cameraShapes } from './camera-shapes.ts';
import { clockShapes } from './clock-shapes.ts';
import { landShapes } from './land-shapes.ts';
import { keyOfRow } from './pass-key.ts';
import { type PlacedCircle, placeCircles } from './place-circles.ts';
import type { PlanData } from './plan-data.ts';
import { type Box, planFrame } from './plan-frame.ts';
import { aimShapes, leaderShapes, numberCircle, wayShapes } from './row-shapes.ts';
import { northShapes, scaleShapes } from './scale-and-north.ts';
import { crossAt, openPath, stroke, walkDash } from './strokes.ts';

/**
 * The plan from above in a box of paper, to a round scale: the mark in the middle, the camera under it at six, the hours
 * round it, edges of the picture, subjects, hazards, ways on foot (short dashes), ways of moving lamps (long dashes), and
 * a numbered circle where each lamp is. One stroke weight, black on white.
 *
 * @param card its rows are those that are shown
 */
export const drawPlan = (card: FieldCard, data: PlanData, box: Box): Shape[] => {
  const frame = planFrame(card, box);
  const mark = frame.place(card.mark.place);
  const camera = frame.place(card.camera.place);
  const circles = placeCircles(
    card.rows.map(({ start }) => frame.place(start.place)),
    box,
    [mark, camera],
  );
  const placed = card.rows.map((row, r) => ({ row, circle: circles[r] as PlacedCircle }));
  const shown = new Set([null, ...card.rows.map(keyOfRow)]);
  const walks = data.walks.filter(({ from, to }) => shown.has(from) && shown.has(to));
  const drawn: Shape[] = [
    ...landShapes(data, frame),
    ...cameraShapes(card, frame, data.northDegrees),
    ...walks.map(
      ({ points }): Shape => ({
        kind: 'path',
        path: openPath(points.map(frame.place)),
        width: stroke,
        fill: 'none',
        dash: walkDash,
      }),
    ),
    ...placed.flatMap(({ row, circle }) => [...wayShapes(row, frame), ...aimShapes(row, circle, frame)]),
    ...clockShapes(frame, mark, circles, {
      camera,
      spots: circles.map(({ spot }) => spot),
      lines: [...walks.map(({ points }) => points), ...card.rows.map(({ way }) => way)].map((line) =>
        line.map(frame.place),
      ),
    }),
    crossAt(mark),
    ...placed.flatMap(({ row, circle }) => leaderShapes(row, circle)),
    ...placed.flatMap(({ row, circle }) => numberCircle(row.number, circle.middle)),
    ...northShapes(frame, data.northDegrees),
    ...scaleShapes(frame, card.lengths),
  ];
  return [{ kind: 'clip', ...box, shapes: drawn.filter((shape) => shape.kind !== 'path' || shape.path !== '') }];
};

/** The plan on a page of its own, with a frame round it. */
export const planPage = (card: FieldCard, data: PlanData, sizeMm = 160): Page => {
  const box: Box = { x: 1, y: 1, width: sizeMm - 2, height: sizeMm - 2 };
  const { x, y, width, height } = box;
  const border: Shape = {
    kind: 'path',
    path: `M${x} ${y}L${x + width} ${y}L${x + width} ${y + height}L${x} ${y + height}Z`,
    width: stroke,
    fill: 'none',
  };
  return { widthMm: sizeMm, heightMm: sizeMm, shapes: [border, ...drawPlan(card, data, box)] };
};
