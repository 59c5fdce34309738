import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Camera, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { type StageSubject, stageOf } from '../../../core/world/stage.ts';
import { largestFirst, partFootprintsOf } from './footprint.ts';
import type { PlanColouring } from './plan-inks.ts';
import { beamShapes, discShapes, shadowShape } from './plan-lamp-shapes.ts';
import { planLamps } from './plan-lamps.ts';
import { isLand } from './plan-land.ts';
import { cameraOutline, cameraTurn, frameEdgesPath, pathOf, pathOfAll } from './plan-paths.ts';
import { type PlanPen, type PlanShape, planPen } from './plan-pen.ts';
import { type PlanView, planHalf, ringStep, ringWords, sharedPlanView, toPlan } from './plan-view.ts';

export interface PlanOptions {
  /** One view for several plans (`sharedPlanView`); without it the plan takes its own. */
  readonly view?: PlanView | undefined;
  /** For the screen, or black on white. */
  readonly colouring?: PlanColouring | undefined;
  /** How large it will be drawn: lines and letters are sized for that. */
  readonly sizePixels?: number | undefined;
}

/** Four hours of the clock, six toward the camera. */
const clockShapes = ({ letters, inks, words }: PlanPen, turn: number): PlanShape[] =>
  [12, 3, 6, 9].map((hour) => {
    const t = turn + (hour * Math.PI) / 6;
    const r = planHalf - letters * 0.75;
    return words(String(hour), [r * Math.cos(t), r * Math.sin(t)], { colour: inks.faint });
  });

/** A subject: the edge round all of its parts, then what they cover. */
const bodyShapes = ({ view, inks, pixel, path }: PlanPen, subject: StageSubject, fill: string): PlanShape[] => {
  const outlines = partFootprintsOf(subject).map((outline) => outline.map((point) => toPlan(view, point)));
  const body = pathOfAll(outlines);
  return [path(body, { stroke: inks.bodyEdge, width: 2 * pixel }), path(body, { fill })];
};

/** The camera, and the picture's left and right edges. */
const cameraShapes = ({ view, inks, pixel, letters, path }: PlanPen, camera: Camera, turn: number): PlanShape[] => {
  const [x, y] = toPlan(view, camera.position);
  const size = letters * 0.08;
  const [c, s] = [-Math.sin(turn) * size, Math.cos(turn) * size];
  const body = cameraOutline.map(([a, b]): GroundPoint => [x + a * c - b * s, y + a * s + b * c]);
  return [
    path(frameEdgesPath(view, camera), { stroke: inks.quiet, dash: [4 * pixel, 3 * pixel] }),
    path(pathOf(body), { fill: inks.ground, stroke: inks.ink, width: pixel * 1.25 }),
  ];
};

const scaleBarShapes = ({ view, inks, pixel, letters, path, words }: PlanPen): PlanShape[] => {
  const step = ringStep(view, 4);
  const [x, y] = [pixel * 5 - planHalf, planHalf - pixel * 5];
  const length = step * view.unitsPerMetre;
  return [
    path(`M${x} ${y - pixel * 4}V${y}h${length.toFixed(2)}v${-pixel * 4}`, { stroke: inks.quiet }),
    words(ringWords(step), [x + pixel * 2, y - pixel * 3 - letters * 0.45], { anchor: 'start' }),
  ];
};

/**
 * A small ground plan as shapes, back to front: the same for the page and for a canvas. What reaches beyond `planHalf` is
 * to be cut off by whoever draws it.
 */
export const planShapes = (setup: Setup, scheme: Scheme, options: PlanOptions = {}): PlanShape[] => {
  const { view = sharedPlanView(setup, [scheme]), colouring = 'dark', sizePixels = 160 } = options;
  const pen = planPen(view, colouring, sizePixels);
  const camera = scheme.camera ?? setup.camera;
  const turn = cameraTurn(view, camera);
  const stage = stageOf(setup);
  const bodies = largestFirst(stage.subjects, (subject) => subject);
  const lamps = planLamps(setup, scheme);
  const ground = `M${-planHalf} ${-planHalf}H${planHalf}V${planHalf}H${-planHalf}Z`;
  return [
    pen.path(ground, { fill: pen.inks.ground }),
    ...bodies
      .filter((subject) => isLand(view, subject))
      .flatMap((subject) => bodyShapes(pen, subject, pen.inks.ground)),
    ...lamps.map((entry) => shadowShape(pen, stage, entry)),
    ...clockShapes(pen, turn),
    ...lamps.flatMap((entry) => beamShapes(pen, setup.measuredBeams, entry)),
    ...bodies.filter((subject) => !isLand(view, subject)).flatMap((subject) => bodyShapes(pen, subject, pen.inks.body)),
    ...cameraShapes(pen, camera, turn),
    ...scaleBarShapes(pen),
    ...discShapes(pen, lamps, toPlan(view, camera.position)),
  ];
};
