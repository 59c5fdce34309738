import { viewDirection } from '../../../core/camera/camera-view.ts';
import { type LitGrid, litGrid, litState, litStateAt } from '../../../core/readings/lit-grid.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { type SurfacePoint, surfaceAlong } from '../../../core/trace/surface-point.ts';
import { buildWorld, type World } from '../../../core/world/world.ts';
import { blurLines } from './blur-lines.ts';
import { contoursOf, deepestPlace, type Place } from './contours.ts';
import type { MarksRequest, PassShadows, SchemeMarks } from './marks-messages.ts';
import { type MarkedLight, outlineRuns } from './outline-runs.ts';
import { drawnLine } from './simplify-line.ts';

/** Looks across the picture; down it as many as its shape asks for. */
const columns = 240;

const lightsOf = ({ frames }: World, frameIds: readonly string[]): MarkedLight[] =>
  frames
    .filter(({ id }) => frameIds.includes(id))
    .flatMap(({ id, lights }) =>
      lights.flatMap(({ id: passId, source }) => (source.kind === 'lamp' ? [{ frameId: id, passId, source }] : [])),
    );

const shadowsOf = (
  { stage }: World,
  { rows, masks }: LitGrid,
  lights: readonly MarkedLight[],
  look: (place: Place) => SurfacePoint | null,
): PassShadows[] =>
  lights.map(({ frameId, passId, source }, s) => {
    const mask = { columns, rows, has: (cell: number) => masks[s]?.[cell] === litState.shadow };
    const isIn = (place: Place) => litStateAt(stage, source, look(place)) === litState.shadow;
    const rings = contoursOf(mask, isIn).map((ring) => drawnLine(ring.map(({ place }) => place)));
    return { frameId, passId, rings, middle: rings.length > 0 ? deepestPlace(mask) : null };
  });

/** Shadows, lit outlines and lines of equal blur of one scheme, as its camera sees them through a pinhole. */
export const schemeMarks = (
  setup: Setup,
  scheme: Scheme,
  { frameIds, wants }: Pick<MarksRequest, 'frameIds' | 'wants'>,
): SchemeMarks => {
  const world = buildWorld(setup, scheme);
  const { stage, view, aspect } = world;
  const lights = lightsOf(world, frameIds);
  const rows = Math.max(Math.round(columns / aspect), 1);
  const sources = lights.map(({ source }) => source);
  const grid = litGrid(stage, view, columns, rows, wants.shadows ? sources : []);
  const look = ([x, y]: Place) => surfaceAlong(stage, view.position, viewDirection(view, x, y));
  return {
    shadows: wants.shadows ? shadowsOf(world, grid, lights, look) : [],
    outlines: wants.outline
      ? stage.subjects.flatMap(({ id }, subject) => {
          const runs = outlineRuns(stage, grid, subject, lights, look);
          return runs.length > 0 ? [{ subjectId: id, runs }] : [];
        })
      : [],
    blurs: wants.sharpness
      ? blurLines(
          world,
          scheme.camera ?? setup.camera,
          scheme.frames.filter(({ id }) => frameIds.includes(id)),
        )
      : [],
  };
};
