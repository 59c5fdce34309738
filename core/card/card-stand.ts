import { closestHit } from '../geometry/cast-ray.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import { turnAround } from '../readings/direction.ts';
import type { Position } from '../setup/schema/setup.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { bodyHeightWord } from '../units/body-height.ts';
import { clockHoursFromTurn, clockText } from '../units/clock.ts';
import { worldFromDocument } from '../world/axes.ts';
import type { Stage } from '../world/stage.ts';
import type { CardStand } from './field-card.ts';

/** Where clocks and paces are counted from. */
export interface Reckoning {
  readonly stage: Stage;
  /** The mark and the camera, [east, north]. */
  readonly mark: GroundPoint;
  readonly camera: GroundPoint;
  readonly paceMetres: number;
}

/** How high a place is over what lies right under it: ground, deck, slab or hill. Nothing under it: over nought. */
export const heightOverGround = (stage: Stage, [east, north, up]: Position): number =>
  closestHit(stage.tree, [east, up, -north], [0, -1, 0])?.t ?? up;

/** A lamp's place counted from the mark, with the word for how high it is held. Metres, [east, north, up]. */
export const cardStand = ({ stage, mark, camera, paceMetres }: Reckoning, position: Position): CardStand => {
  const level = ([east, north]: GroundPoint) => worldFromDocument([east, north, 0]);
  const turn = turnAround(level(mark), level(camera), level([position[0], position[1]]));
  const distanceMetres = Math.hypot(position[0] - mark[0], position[1] - mark[1]);
  const heightMetres = heightOverGround(stage, position);
  return {
    place: [position[0], position[1]],
    clock: clockText(clockHoursFromTurn(turn)),
    roundDegrees: degreesFromRadians(turn),
    distanceMetres,
    paces: distanceMetres / paceMetres,
    heightMetres,
    heightWord: bodyHeightWord(heightMetres),
  };
};
