import type { Triple } from '../colour/matrix.ts';
import { scale } from '../geometry/vec.ts';
import { type DomeOf, domeLightOf } from '../sky/dome-of.ts';
import type { GlowDome } from '../sky/glow-dome.ts';
import { midExposure } from '../sky/mid-exposure.ts';
import { moonHaloLux } from '../sky/moon-halo.ts';
import { moonLight } from '../sky/moon-light.ts';
import { skyAt } from '../sky/sky-at.ts';
import type { SkyState } from '../sky/sky-state.ts';
import type { Air } from './air.ts';
import type { HourSky } from './hour-sky.ts';
import type { Source, WorldLight } from './source.ts';

/** The source of a dome, and what it weighs when its luminance is taken so many times. */
const domeSource = (of: DomeOf, times: number): { readonly source: Source; readonly strength: Triple } => ({
  source: { kind: 'dome', of },
  strength: scale(domeLightOf(of).illuminance, times),
});

/** A glow by its shape alone: brighter, it is the same source. */
const shapeOf = (dome: GlowDome): GlowDome => ({ ...dome, luminanceAt10DegreesCdM2: 1 });

/**
 * Moonlight on the land: straight, and what thin cloud bends so little that it comes from almost the same direction.
 * null while the moon is down.
 */
const moonOf = (state: SkyState): { readonly source: Source; readonly strength: Triple } | null => {
  const moon = moonLight(state);
  if (!moon) return null;
  const { toward, radiusRadians, colour, lux } = moon;
  return { source: { kind: 'moon', toward, radiusRadians }, strength: scale(colour, lux + moonHaloLux(state)) };
};

/** To the minute: frames of like length then have the same sources, and with them the same layers. */
const minuteOf = (seconds: number): number => 120 * Math.round(seconds / 120);

/**
 * The light of the sky of an hour: the moon while it is up, the sky on the land, the glow of each town, and the sky as it is
 * seen. Moon and sky light the land as they stand at the middle of the exposure, to the minute after the shutter opens: up
 * to a minute long, as it opens. The seen sky takes its middle exactly, see `skyPicture`.
 */
export const skyLights = ({ input, domes }: HourSky, haze: Air | null, seconds: number): WorldLight[] => {
  const common = { seconds, lit: [0, seconds], holderLuminance: null } as const;
  const middle = midExposure(input, minuteOf(seconds));
  const { northRadians } = input;
  const moon = moonOf(skyAt(middle));
  const sky = domeSource({ part: 'sky', input: middle, domes }, 1);
  return [
    ...(moon ? [{ id: 'moon', ...moon, ...common }] : []),
    { id: 'sky', ...sky, ...common },
    ...domes.flatMap((dome, i) => {
      const times = dome.luminanceAt10DegreesCdM2;
      if (times === 0) return [];
      const of = { part: 'glow', dome: shapeOf(dome), northRadians } as const;
      return [{ id: `glow ${i + 1}`, ...domeSource(of, times), ...common }];
    }),
    {
      id: 'seen sky',
      source: { kind: 'seen-sky', sky: { input, domes, seconds, haze } },
      strength: [1, 1, 1],
      ...common,
    },
  ];
};
