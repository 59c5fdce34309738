import type { Strategy } from '../../../core/readings/strategy-frames.ts';
import type { PlannedPass } from '../../../core/readings/strategy-pass.ts';
import type { StrategyPlan } from '../../../core/readings/strategy-plan.ts';
import type { Frame } from '../../../core/setup/schema/setup.ts';
import { markedText } from '../../../core/units/third-stops.ts';
import { shutterText, signed, threeFigures } from '../ui/words.ts';

/** What the strategies are called, and what each is. */
export const strategyNames: readonly (readonly [strategy: Strategy, name: string, what: string])[] = [
  ['one-frame', 'One frame', 'Sky and land at once, painted by hand while the stars are exposed.'],
  ['standing', 'Standing lights', 'Dim lamps on stands, lit as long as the sky is exposed.'],
  ['separate', 'Painted frames', 'The sky alone, then a frame at low ISO for each lamp.'],
];

const whole = (seconds: number): string => String(Math.round(seconds));

/** "f/2.8 · 20 s · ISO 6400" */
const exposureText = ({ aperture, seconds, iso }: Frame): string =>
  [markedText('aperture', aperture), markedText('seconds', seconds), markedText('iso', iso)].join(' · ');

/** The exposure that the lamps are in, and how much light that asks for: "205 times less light than now (7.7 stops)". */
export const exposureWords = ({ scheme, doseRatio }: StrategyPlan): string => {
  const lit = scheme.frames.filter(({ passes }) => passes.length > 0);
  const first = lit[0];
  if (!first) return '';
  const what = lit.length > 1 ? `${lit.length} frames, the first ${exposureText(first)}` : exposureText(first);
  const ratio = doseRatio < 1 ? 1 / doseRatio : doseRatio;
  if (ratio < 1.3) return `${what}: as much light as now`;
  const word = doseRatio < 1 ? 'less' : 'more';
  return `${what}: ${threeFigures(Number(ratio.toPrecision(2)))} times ${word} light than now (${Math.log2(ratio).toFixed(1)} stops)`;
};

/** Level, density and count of a pass: "count 5 at 100 %", "lit throughout at 6.1 % under 5 stops of ND". */
export const settingWords = ({ levelPercent, ndStops, seconds, staysLit, wasWalked }: PlannedPass): string => {
  const lamp = `${Number(levelPercent.toPrecision(2))} %${ndStops > 0 ? ` under ${ndStops} ${ndStops === 1 ? 'stop' : 'stops'} of ND` : ''}`;
  if (!staysLit) return `count ${shutterText(seconds)} at ${lamp}`;
  return `${wasWalked ? 'standing half-way, ' : ''}lit throughout at ${lamp}`;
};

/** What comes of a pass: "−1.5 stops", "1.2 stops too bright". */
export const outcomeWords = ({ stops, missStops, illuminanceLux, staysLit }: PlannedPass): string => {
  if (missStops !== null) return `${Math.abs(missStops).toFixed(1)} stops too ${missStops > 0 ? 'bright' : 'dark'}`;
  if (stops === null) return 'its edge as bright as now';
  return `${signed(stops)} stops${staysLit && illuminanceLux !== null ? `, ${threeFigures(illuminanceLux)} lx` : ''}`;
};

/** Whether one person can do it, with the seconds. */
export const walkWords = ({ strategy, walk, wholeSeconds, scheme }: StrategyPlan): string => {
  const { isPossible, isBarred, neededSeconds, availableSeconds, longestWaitSeconds } = walk;
  if (isBarred) return 'Can be walked: no, no way leads to every lamp.';
  if (strategy === 'standing') return 'Nobody walks: put up and switched on before the shutter.';
  const inAll = `all ${scheme.frames.length} frames in ${whole(wholeSeconds)} s`;
  if (strategy === 'separate')
    return longestWaitSeconds > 0
      ? `Can be walked: yes, between frames, up to ${whole(longestWaitSeconds)} s at a time; ${inAll}.`
      : `Nothing to walk; ${inAll}.`;
  if (neededSeconds === 0) return 'Nobody walks: all lamps stand.';
  const times = `${whole(neededSeconds)} s for ${shutterText(availableSeconds)} s`;
  return isPossible
    ? `Can be walked: yes, ${times}.`
    : `Can be walked: no, ${times}. It can with stands, a helper or more frames.`;
};
