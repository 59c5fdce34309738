import { cardData } from '../../../core/card/card-data.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { boxAt } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A lamp's place on the clock round the mark, camera due south of it: hours, metres, height. */
export const atClock = (hours: number, metres: number, up: number): [number, number, number] => {
  const turn = ((6 - hours) * Math.PI) / 6;
  return [metres * Math.sin(turn), -metres * Math.cos(turn), up];
};

export const aimAtStone = [0, 0, 1] as const;

/** A pass of the torch from a place on the clock, aimed at the stone's middle. */
export const passFrom = (id: string, hours: number, metres: number, up: number, rest: object = {}) => ({
  id,
  name: id,
  lampId: 'torch',
  on: 0,
  off: 3,
  waypoints: [{ position: atClock(hours, metres, up), aim: aimAtStone }],
  ...rest,
});

/** A stone in the middle, the camera 9 m south of it, and the given passes in one frame of 10 s. */
export const stoneSetup = (first: object, ...passes: object[]): Setup =>
  onePassSetup({
    camera: { position: [0, -9, 1.2], aim: [0, 0, 1], focalLengthMm: 18 },
    pass: first,
    passes,
    subjects: [boxAt('stone', [0, 0, 0], [1, 0.6, 2])],
  });

export const cardOf = (setup: Setup, scheme = setup.schemes[0] as Scheme): FieldCard =>
  cardData(setup, scheme, reportScheme(setup, scheme));
