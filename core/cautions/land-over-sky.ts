import { allLightStops } from '../readings/all-light.ts';
import { skyLevel } from '../readings/sky-level.ts';
import { ratioFromStops, stopsFromRatio } from '../units/stops.ts';
import { type BlendPart, blendParts } from './blend-parts.ts';
import type { ReadPass, SchemeCase, SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

/** What is lit most in a part: the target that its own pass makes brightest, under all light, as the blend takes it. */
const brightest = (
  { world }: SchemeCase,
  part: BlendPart,
): { readonly pass: ReadPass; readonly stops: number; readonly part: BlendPart } | null => {
  const own = ({ reading }: ReadPass) => reading.target?.stops ?? Number.NEGATIVE_INFINITY;
  const [pass] = part.hasLand ? [...part.passes].sort((a, b) => own(b) - own(a)) : [];
  const stops = pass ? allLightStops(world, part.worldFrame, pass.pass.id) : null;
  return pass && stops !== null ? { pass, stops: stops + stopsFromRatio(part.weight), part } : null;
};

/** Where one of these is said of a pass, it is to be darker anyway. */
const darkerAnyway = ['burnt', 'unreachable-level'];

/** What a blend has lit is so much brighter than its sky that it looks pasted in. Said once, of the brightest. */
export const landOverSky: SchemeRule = (schemeCase) => {
  const parts = blendParts(schemeCase);
  if (parts.length < 2) return [];
  const skies = parts.flatMap((part) => {
    const stops = part.hasSky && part.frame.purpose === 'sky' ? skyLevel(schemeCase.world, part.picture) : null;
    return stops === null ? [] : [{ name: part.frame.name, stops: stops + stopsFromRatio(part.weight) }];
  });
  const [sky] = skies.sort((a, b) => b.stops - a.stops);
  const [land] = parts.flatMap((part) => brightest(schemeCase, part) ?? []).sort((a, b) => b.stops - a.stops);
  if (!sky || !land || land.pass.cautions.some(({ code }) => darkerAnyway.includes(code))) return [];
  const value = land.stops - sky.stops;
  const limit = limits.landOverSkyStops;
  if (value <= limit) return [];
  const share = ratioFromStops(limit - value);
  const { pass, frame } = land.pass;
  return [
    {
      code: 'land-over-sky',
      severity: 'note',
      passId: pass.id,
      frameId: frame.id,
      message: `${pass.name}: its target is ${value.toFixed(1)} stops brighter than the sky of “${sky.name}”. Land that outshines its sky looks pasted in. Count ${share.toFixed(1)} times as long, or give “${frame.name}” the weight ${(land.part.weight * share).toFixed(2)} in the blend.`,
      value,
      limit,
    },
  ];
};
