import type { NightProbe } from './night-probe.ts';

export const dayMilliseconds = 86_400_000;

/** One turn of the earth against the stars is 86164.0905 s. */
export const millisecondsPerRadian = 86_164_090.5 / (2 * Math.PI);

/** Noon of the sun nearest to a moment: the sun's hour angle grows by nearly a turn a day. */
export const noonBeside = ({ sunHourAngle }: NightProbe, milliseconds: number): number => {
  let noon = milliseconds;
  for (let pass = 0; pass < 3; pass++) noon -= (sunHourAngle(noon) / (2 * Math.PI)) * dayMilliseconds;
  return Math.round(noon);
};

/** The noons of the sun before and after a moment; a moment at noon begins its night. */
export const noonsRound = (probe: NightProbe, milliseconds: number): readonly [number, number] => {
  const nearest = noonBeside(probe, milliseconds);
  return nearest <= milliseconds
    ? [nearest, noonBeside(probe, nearest + dayMilliseconds)]
    : [noonBeside(probe, nearest - dayMilliseconds), nearest];
};
