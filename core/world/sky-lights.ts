import type { Triple } from '../colour/matrix.ts';
import { scale } from '../geometry/vec.ts';
import { type DomeOf, domeLightOf } from '../sky/dome-of.ts';
import type { GlowDome } from '../sky/glow-dome.ts';
import { moonLight } from '../sky/moon-light.ts';
import { skyAt } from '../sky/sky-at.ts';
import type { Air } from './air.ts';
import type { HourSky } from './hour-sky.ts';
import type { Source, WorldLight } from './source.ts';

/** The source of a dome, and what it weighs when its luminance is taken so many times; null where it is dark. */
const domeSource = (of: DomeOf, times: number): { readonly source: Source; readonly strength: Triple } | null => {
  const light = domeLightOf(of);
  return light && times > 0 ? { source: { kind: 'dome', of }, strength: scale(light.illuminance, times) } : null;
};

/** A glow by its shape alone: brighter, it is the same source. */
const shapeOf = (dome: GlowDome): GlowDome => ({ ...dome, luminanceAt10DegreesCdM2: 1 });

/**
 * The light of the sky of an hour: the moon while it is up, the sky on the land, the glow of each town, and the sky as it is
 * seen. All of it as the shutter opens; only stars and planets go on moving while it is open.
 */
export const skyLights = ({ input, domes }: HourSky, haze: Air | null, seconds: number): WorldLight[] => {
  const common = { seconds, lit: [0, seconds], holderLuminance: null } as const;
  const moon = moonLight(skyAt(input));
  const { northRadians } = input;
  const sky = domeSource({ part: 'sky', input, domes }, 1);
  const glows = domes.map((dome) =>
    domeSource({ part: 'glow', dome: shapeOf(dome), northRadians }, dome.luminanceAt10DegreesCdM2),
  );
  return [
    ...(moon
      ? [
          {
            id: 'moon',
            source: { kind: 'moon', toward: moon.toward, radiusRadians: moon.radiusRadians } as const,
            strength: scale(moon.colour, moon.lux),
            ...common,
          },
        ]
      : []),
    ...(sky ? [{ id: 'sky', ...sky, ...common }] : []),
    ...glows.flatMap((glow, i) => (glow ? [{ id: `glow ${i + 1}`, ...glow, ...common }] : [])),
    {
      id: 'seen sky',
      source: { kind: 'seen-sky', sky: { input, domes, seconds, haze } },
      strength: [1, 1, 1],
      ...common,
    },
  ];
};
