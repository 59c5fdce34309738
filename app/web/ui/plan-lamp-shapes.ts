import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { MeasuredBeam } from '../../../core/setup/schema/setup.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { drawnBeamDegrees } from './beam-width.ts';
import { groundShadows } from './ground-shadows.ts';
import { hatchPath } from './hatch.ts';
import { cssColourOfLight } from './light-colour.ts';
import { openPath } from './open-path.ts';
import { inkOn } from './plan-inks.ts';
import type { PlanLamp } from './plan-lamps.ts';
import { isLand } from './plan-land.ts';
import { circlePath, wedgePath } from './plan-paths.ts';
import type { PlanPen, PlanShape } from './plan-pen.ts';
import { toPlan } from './plan-view.ts';

const colourOf = ({ inks, isPaper }: PlanPen, { lamp, pass, frame }: PlanLamp): string =>
  isPaper ? inks.ink : cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);

/** A lamp's shadows on the ground, hatched along the way that it shines. */
export const shadowShape = (pen: PlanPen, stage: Stage, { place }: PlanLamp): PlanShape => {
  const [x, y] = toPlan(pen.view, place.position);
  const [ax, ay] = toPlan(pen.view, place.aim);
  const along = Math.atan2(ay - y, ax - x);
  const hatched = groundShadows(stage, place)
    .filter(({ subject }) => !isLand(pen.view, subject))
    .map(({ outlines }) =>
      hatchPath(
        outlines.map((outline) => outline.map((point) => toPlan(pen.view, point))),
        along,
        pen.pixel * 3,
      ),
    );
  return pen.path(hatched.join(''), { stroke: pen.inks.quiet, width: pen.pixel * 0.8, opacity: 0.8 });
};

/** A lamp's beam, its axis, the way that it is carried, and what its aim goes over. */
export const beamShapes = (pen: PlanPen, measured: readonly MeasuredBeam[], entry: PlanLamp): PlanShape[] => {
  const colour = colourOf(pen, entry);
  const from = toPlan(pen.view, entry.place.position);
  const to = toPlan(pen.view, entry.place.aim);
  const wedge = wedgePath(...from, to[0] - from[0], to[1] - from[1], drawnBeamDegrees(entry.lamp, measured));
  const walk = entry.pass.waypoints.map(({ position }) => toPlan(pen.view, position));
  const aims = entry.pass.waypoints.map(({ aim }) => toPlan(pen.view, aim));
  const turns = aims.some(([x, y]) => Math.hypot(x - to[0], y - to[1]) > pen.pixel);
  return [
    pen.path(wedge, { fill: colour, opacity: pen.inks.beam }),
    pen.path(openPath([from, to]), { stroke: colour, dash: [1.5 * pen.pixel, 2.5 * pen.pixel] }),
    ...(walk.length > 1 ? [pen.path(openPath(walk), { stroke: colour })] : []),
    ...(turns ? [pen.path(openPath(aims), { stroke: colour, dash: [pen.pixel, 2 * pen.pixel] })] : []),
  ];
};

/**
 * The lamps as numbered discs. Those at one place, or at the camera, stand side by side, so that every number is read;
 * their beams begin where they are.
 */
export const discShapes = (pen: PlanPen, lamps: readonly PlanLamp[], camera: GroundPoint): PlanShape[] => {
  const { inks, isPaper, pixel } = pen;
  const radius = pen.letters * 0.75;
  const taken: GroundPoint[] = [camera];
  return lamps.flatMap((entry) => {
    let [x, y] = toPlan(pen.view, entry.place.position);
    while (taken.some(([px, py]) => Math.hypot(px - x, py - y) < radius * 1.6)) x += radius * 2;
    taken.push([x, y]);
    const colour = colourOf(pen, entry);
    return [
      pen.path(circlePath([x, y], radius), {
        fill: isPaper ? inks.ground : colour,
        stroke: isPaper ? inks.ink : inks.ground,
        width: pixel * 1.5,
      }),
      pen.words(String(entry.number), [x, y], { colour: isPaper ? inks.ink : inkOn(colour), isStrong: true }),
    ];
  });
};
