import { describe, expect, it } from 'vitest';
import type { CardRow } from '../../../core/card/card-row.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { goingLimits } from '../../../core/card/going-limits.ts';
import { movedOnLevel } from '../../../core/card/moved-level.ts';
import { movedStand } from '../../../core/card/moved-stand.ts';
import { placeTrouble } from '../../../core/card/place-trouble.ts';
import { afterVerdict, type Going } from '../../../core/card/stop-rule-steps.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

const asPlanned = { distanceTimes: 1, hoursMoved: 0, heightTimes: 1, levelTimes: 1 };

/** A card of one pass that is aimed past the mark, which a second pass draws away from it. */
const cardAimedAside = (position: [number, number, number], aim: [number, number, number], rest: object = {}) =>
  cardOf(
    stoneSetup(
      passFrom('a', 3, 4, 1, { waypoints: [{ position, aim }], ...rest }),
      passFrom('b', 9, 4, 1, { waypoints: [{ position: [-4, 0, 1], aim: [-0.3, 0, 1] }] }),
    ),
  );

const rowOf = (card: FieldCard, name: string): CardRow => card.rows.find((row) => row.name === name) as CardRow;

const metresToAim = ({ place, aim, riseMetres }: CardRow['start']) =>
  Math.hypot(place[0] - aim[0], place[1] - aim[1], riseMetres);

describe('movedStand', () => {
  it.each([
    [
      [3, -4, 1],
      [0.4, 0, 1.5],
    ],
    [
      [2, 0, 2.1],
      [0.3, 0, 1],
    ],
    [
      [6, 2, 0.3],
      [0, 0, 2],
    ],
  ] as [[number, number, number], [number, number, number]][])(
    'from %j, aimed at %j: ×1.4 as far from there, not from the mark, is one stop by the inverse square',
    (position, aim) => {
      const card = cardAimedAside(position, aim);
      const { start } = rowOf(card, 'a');
      for (const distanceTimes of [Math.SQRT2, 2, Math.SQRT1_2]) {
        const moved = movedStand(card, start, { ...asPlanned, distanceTimes });
        expect(2 * Math.log2(metresToAim(moved) / metresToAim(start))).toBeCloseTo(2 * Math.log2(distanceTimes), 9);
        // along the line to the aim
        const bearing = ({ place }: CardRow['start']) => Math.atan2(place[0] - aim[0], place[1] - aim[1]);
        expect(bearing(moved)).toBeCloseTo(bearing(start), 9);
        const fromMark = Math.hypot(moved.place[0] - card.mark.place[0], moved.place[1] - card.mark.place[1]);
        expect(moved.distanceMetres).toBeCloseTo(fromMark, 9);
        expect(moved.paces * card.paceMetres).toBeCloseTo(fromMark, 9);
      }
    },
  );

  it('an hour round the clock keeps as far from what it lights', () => {
    const card = cardAimedAside([3, -4, 1], [0.4, 0, 1.5]);
    const { start } = rowOf(card, 'a');
    const moved = movedStand(card, start, { ...asPlanned, hoursMoved: -1 });
    expect(metresToAim(moved)).toBeCloseTo(metresToAim(start), 9);
    expect(moved.clock).not.toBe(start.clock);
    // as planned is as on the card
    expect(movedStand(card, start, asPlanned)).toEqual(start);
  });
});

describe('movedOnLevel', () => {
  const right = { place: [3, 0], aim: [3, 0], riseMetres: -2 } as const;

  it('a lamp right over its aim has no line to go along: it only goes round the mark', () => {
    expect(movedOnLevel(right, [0, 0], { distanceTimes: 2, hoursMoved: 0 })).toEqual([3, 0]);
    // three hours clockwise, from the east to the south
    const [east, north] = movedOnLevel(right, [0, 0], { distanceTimes: 2, hoursMoved: 3 });
    expect(east).toBeCloseTo(0, 9);
    expect(north).toBeCloseTo(-3, 9);
  });
});

describe('goingLimits', () => {
  it('no nearer than 1 m or a third, no farther than three times (common practice, no published source)', () => {
    const limitsAt = (metres: number) => {
      const card = cardAimedAside([metres, 0, 1], [0, 0, 1]);
      return goingLimits(card, rowOf(card, 'a'), { ...asPlanned, seconds: 3 });
    };
    expect(limitsAt(12).leastTimes).toBeCloseTo(1 / 3, 9);
    expect(limitsAt(2).leastTimes).toBeCloseTo(1 / 2, 9);
    // who stands nearer by plan may stay
    expect(limitsAt(0.6).leastTimes).toBe(1);
    expect(limitsAt(12).mostTimes).toBe(3);
  });

  it('a moving lamp keeps that distance at both ends of its way', () => {
    // aimed at the stone from 12 m, then from 2 m: half of that is 1 m
    const waypoints = [12, 2].map((east, i) => ({ time: 2 * i, position: [east, 0, 1], aim: [0, 0, 1] }));
    const card = cardOf(stoneSetup(passFrom('a', 3, 4, 1, { waypoints })));
    expect(goingLimits(card, rowOf(card, 'a'), { ...asPlanned, seconds: 3 }).leastTimes).toBeCloseTo(1 / 2, 9);
  });

  it('a lamp is turned down to its lowest level and no lower; one that is planned at nought not at all', () => {
    const leastLevelTimes = (levelPercent: number, lowestLevelPercent: number) => {
      const card = cardOf(stoneSetup(passFrom('a', 3, 4, 1, { levelPercent })));
      const row = { ...rowOf(card, 'a'), lowestLevelPercent };
      return goingLimits(card, row, { ...asPlanned, seconds: 3 }).leastLevelTimes;
    };
    expect(leastLevelTimes(50, 20)).toBeCloseTo(0.4, 9);
    expect(leastLevelTimes(0, 20)).toBe(1);
  });

  it('never right under what it lights', () => {
    const card = cardAimedAside([3, 0, 1], [0, 0, 9]);
    const limits = goingLimits(card, rowOf(card, 'a'), { ...asPlanned, seconds: 3 });
    expect(Math.hypot(3, 8) * limits.leastTimes).toBeCloseTo(Math.hypot(1, 8), 9);
  });

  it('a count is doubled only where the passes after it in the frame still fit', () => {
    const card = cardOf(
      stoneSetup(passFrom('a', 3, 4, 1, { on: 0, off: 3 }), passFrom('b', 9, 4, 1, { on: 5, off: 8 })),
    );
    const going: Going = { ...asPlanned, seconds: 3 };
    // 10 s of shutter less 2 of way and 3 of the second pass
    expect(goingLimits(card, rowOf(card, 'a'), going).mostSeconds).toBeCloseTo(5, 9);
    expect(goingLimits(card, rowOf(card, 'b'), going).mostSeconds).toBeCloseTo(5, 9);
  });
});

describe('placeTrouble', () => {
  const card = cardOf(stoneSetup(passFrom('a', 3, 4, 1)));
  const { start } = rowOf(card, 'a');
  const at = (east: number, north: number) => placeTrouble(card, start, { ...start, place: [east, north] });

  it('tells a place before the subject and in the picture, and one in something that stands there', () => {
    // the camera looks north from 9 m south, 18 mm on 36 mm: 45° to each side
    expect([at(0, -4), at(4.9, -4), at(5.1, -4), at(0, 3), at(0, -10)]).toEqual([
      'in-picture',
      'in-picture',
      null,
      null,
      null,
    ]);
    expect(at(0.1, 0.1)).toBe('in-something');
  });

  it('a camera that looks straight down has nothing before the subject to stand in', () => {
    const down = { ...card, camera: { ...card.camera, aim: card.camera.place } };
    expect(placeTrouble(down, start, { ...start, place: [0, -4] })).toBeNull();
    expect(placeTrouble(down, start, { ...start, place: [0.1, 0.1] })).toBe('in-something');
  });

  it('says nothing of what the plan has so already', () => {
    const planned = { ...start, place: [0, -4] as const };
    expect(placeTrouble(card, planned, { ...start, place: [1, -4] })).toBeNull();
    expect(placeTrouble(card, planned, { ...start, place: [0, 0] })).toBe('in-something');
  });
});

describe('too dark on the phone', () => {
  it('goes nearer by one stop until the limit', () => {
    const card = cardAimedAside([6, 0, 1], [0.5, 0, 1], { on: 0, off: 8 });
    const row = rowOf(card, 'a');
    let going: Going = { ...asPlanned, seconds: 8 };
    const metres: number[] = [];
    for (let i = 0; i < 6; i++) {
      going = afterVerdict(going, 'too-dark', goingLimits(card, row, going));
      metres.push(metresToAim(movedStand(card, row.start, going)));
    }
    for (const [i, is] of metres.entries()) expect(is).toBeCloseTo(5.5 / Math.SQRT2 ** Math.min(i + 1, 3), 9);
  });
});
