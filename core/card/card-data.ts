import type { SchemeReport } from '../cautions/setup-report.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import type { Camera, Scheme, Setup } from '../setup/schema/setup.ts';
import { degreesFromRadians, wrapDegrees } from '../units/angle.ts';
import { buildWorld, type World } from '../world/world.ts';
import { cardFrames, focusStacks } from './card-frames.ts';
import { cardMark } from './card-mark.ts';
import { cardCautions, cardSight, safetyLines, stopRules } from './card-notes.ts';
import { cardRows } from './card-rows.ts';
import { cardSky } from './card-sky.ts';
import { cardSolids } from './card-solids.ts';
import { heightOverGround, type Reckoning } from './card-stand.ts';
import type { CardCamera, FieldCard } from './field-card.ts';

const cameraOf = (
  { position, aim, focalLengthMm }: Camera,
  { stage, view }: World,
  { mark, paceMetres }: Reckoning,
  northDegrees: number,
): CardCamera => {
  const [east, north] = [aim[0] - position[0], aim[1] - position[1]];
  const distanceMetres = Math.hypot(position[0] - mark[0], position[1] - mark[1]);
  return {
    place: [position[0], position[1]],
    aim: [aim[0], aim[1]],
    heightMetres: heightOverGround(stage, position),
    distanceMetres,
    paces: distanceMetres / paceMetres,
    bearingDegrees:
      Math.hypot(east, north) < 1e-6 ? null : wrapDegrees(degreesFromRadians(Math.atan2(east, north)) + northDegrees),
    focalLengthMm,
    halfFieldDegrees: degreesFromRadians(Math.atan(view.tanHalfWidth)),
  };
};

/**
 * The field card of a scheme.
 *
 * @param report readings and cautions of the same setup and scheme (`reportScheme`)
 */
export const cardData = (setup: Setup, scheme: Scheme, report: SchemeReport): FieldCard => {
  const world = buildWorld(setup, scheme);
  const camera = scheme.camera ?? setup.camera;
  const mark = cardMark(setup, scheme, report);
  const { paceMetres } = setup.walking;
  const cameraPlace: GroundPoint = [camera.position[0], camera.position[1]];
  const reckoning: Reckoning = { stage: world.stage, mark: mark.place, camera: cameraPlace, paceMetres };
  const rows = cardRows(setup, scheme, report, world, reckoning);
  return {
    setupName: setup.name,
    schemeName: scheme.name,
    ...setup.card,
    paceMetres,
    sky: cardSky(setup.place),
    mark,
    camera: cameraOf(camera, world, reckoning, setup.place.northDegrees),
    solids: cardSolids(setup, scheme, world.stage),
    rows,
    frames: cardFrames(setup, scheme, report, rows),
    focusStacks: focusStacks(scheme),
    stopRules,
    sight: cardSight(setup, scheme, rows),
    cautions: cardCautions(report, scheme, rows),
    safety: safetyLines,
  };
};
