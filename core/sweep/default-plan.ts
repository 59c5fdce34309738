import { type GelPreset, gelPresets } from '../colour/gel-presets.ts';
import { miredFromKelvin, temperatureLimitsKelvin } from '../colour/mired.ts';
import type { Lamp, Pass, Waypoint } from '../setup/schema/setup.ts';
import { bodyHeights } from '../units/body-height.ts';
import { type GelStack, type SweepKind, type SweepPlan, sweepLimits } from './sweep-plan.ts';

type BodyWord = (typeof bodyHeights)[number]['word'];

const heightsOf = (...words: BodyWord[]): number[] =>
  bodyHeights.filter(({ word }) => words.includes(word)).map(({ metres }) => metres);

/** Gels that are compared, after none, in this order. Common practice, no published source. */
const comparedGels = ['1/8 CTO', '1/4 CTO', '1/2 CTO', 'Full CTO', '1/2 CTB', 'Full CTB', '1/2 plus green'];

const stackOf = ({ name, shiftMired, transmission, colour }: GelPreset): GelStack => ({
  name,
  gels: [{ name, shiftMired, transmission, colour: colour ? [...colour] : null }],
});

/** A gel that would lead past the ends of the white scale stops there: its tile would look like a weaker gel's. */
const isSeenOn = ({ temperatureKelvin }: Lamp, { shiftMired }: GelPreset): boolean => {
  const mired = miredFromKelvin(temperatureKelvin) + shiftMired;
  const { min, max } = temperatureLimitsKelvin;
  return mired <= miredFromKelvin(min) && mired >= miredFromKelvin(max);
};

const gelsFor = (lamp: Lamp): GelStack[] => {
  const presets = comparedGels.map((wanted) => gelPresets.find(({ name }) => name === wanted) as GelPreset);
  return [{ name: 'no gel', gels: [] }, ...presets.filter((preset) => isSeenOn(lamp, preset)).map(stackOf)];
};

/**
 * From half the present level distance to 2.8 times it. By the inverse square each step is a stop of light for a lamp at
 * its aim's height, less for one that is higher or lower: its way to the aim grows by less than its level distance.
 */
const distancesFor = ({ waypoints }: Pass): number[] => {
  const { position, aim } = waypoints[0] as Waypoint;
  const [least, most] = sweepLimits.distanceMetres;
  const away = Math.max(Math.hypot(position[0] - aim[0], position[1] - aim[1]), 2 * least);
  return [-2, -1, 0, 1, 2, 3].map((k) => away * 2 ** (k / 2)).filter((metres) => metres >= least && metres <= most);
};

/** The sweep that is proposed for a pass. Steps of the clock, heights and ratios are common practice, no published source. */
export const defaultPlan = (kind: SweepKind, pass: Pass, lamp: Lamp): SweepPlan => {
  switch (kind) {
    case 'angles':
      return { kind, steps: 12, heightsMetres: heightsOf('shin', 'hip', 'overhead') };
    case 'heights':
      return { kind, heightsMetres: heightsOf('shin', 'knee', 'hip', 'chest', 'overhead') };
    case 'distances':
      return { kind, distancesMetres: distancesFor(pass) };
    case 'gels':
      return { kind, gels: gelsFor(lamp) };
    case 'ratios':
      return { kind, stops: [0, 1, 2, 3, 4] };
  }
};
