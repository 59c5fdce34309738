import { turnAround } from '../readings/direction.ts';
import { degreesFromRadians } from '../units/angle.ts';
import { bodyHeightWord } from '../units/body-height.ts';
import { clockHoursFromTurn, clockText } from '../units/clock.ts';
import { worldFromDocument } from '../world/axes.ts';
import type { CardStand } from './card-row.ts';
import type { FieldCard } from './field-card.ts';
import { movedOnLevel } from './moved-level.ts';
import type { Moved } from './stop-rule-steps.ts';

type Counted = Pick<CardStand, 'place' | 'clock' | 'roundDegrees' | 'distanceMetres' | 'paces'>;

/** A place counted from the mark, the camera at six. */
export const countedFrom = (
  { mark, camera, paceMetres }: { mark: CardStand['place']; camera: CardStand['place']; paceMetres: number },
  place: CardStand['place'],
): Counted => {
  const level = ([east, north]: CardStand['place']) => worldFromDocument([east, north, 0]);
  const turn = turnAround(level(mark), level(camera), level(place));
  const distanceMetres = Math.hypot(place[0] - mark[0], place[1] - mark[1]);
  return {
    place,
    clock: clockText(clockHoursFromTurn(turn)),
    roundDegrees: degreesFromRadians(turn),
    distanceMetres,
    paces: distanceMetres / paceMetres,
  };
};

/** Where the lamp stands on the night: the stand of the card, moved, and counted from the mark anew. */
export const movedStand = (
  { mark, camera, paceMetres }: Pick<FieldCard, 'mark' | 'camera' | 'paceMetres'>,
  stand: CardStand,
  going: Moved,
): CardStand => {
  const place = movedOnLevel(stand, mark.place, going);
  const heightMetres = stand.heightMetres * going.heightTimes;
  const counted =
    place === stand.place ? stand : countedFrom({ mark: mark.place, camera: camera.place, paceMetres }, place);
  return { ...stand, ...counted, heightMetres, heightWord: bodyHeightWord(heightMetres) };
};
