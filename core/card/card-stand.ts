import { closestHit } from '../geometry/cast-ray.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import type { Position } from '../setup/schema/setup.ts';
import { bodyHeightWord } from '../units/body-height.ts';
import type { Stage } from '../world/stage.ts';
import type { CardStand } from './card-row.ts';
import { countedFrom } from './moved-stand.ts';

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

/** A lamp's place counted from the mark, with the word for how high it is held, and what it is aimed at. Metres, [east, north, up]. */
export const cardStand = (
  reckoning: Reckoning,
  { position, aim }: { readonly position: Position; readonly aim: Position },
): CardStand => {
  const heightMetres = heightOverGround(reckoning.stage, position);
  return {
    ...countedFrom(reckoning, [position[0], position[1]]),
    heightMetres,
    heightWord: bodyHeightWord(heightMetres),
    aim: [aim[0], aim[1]],
    riseMetres: aim[2] - position[2],
  };
};
