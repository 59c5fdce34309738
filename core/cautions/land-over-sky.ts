import { surfaceStops } from '../readings/all-light.ts';
import { middleMoment } from '../readings/moments.ts';
import { skyLevel } from '../readings/sky-level.ts';
import { targetSurface } from '../readings/target-reading.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import { ratioFromStops, stopsFromRatio } from '../units/stops.ts';
import { type BlendPart, blendParts } from './blend-parts.ts';
import { blendedStops } from './blended-stops.ts';
import type { ReadPass, SchemeCase, SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

/** A target that shows in the picture, with the frame of whose pass it is. */
interface Target {
  readonly pass: ReadPass;
  readonly part: BlendPart;
  readonly surface: SurfacePoint;
  /** Under all light of that frame, weighted, stops from mid-grey. */
  readonly stops: number;
}

/** What is lit most in a part: the target that its own pass makes brightest, of those where the frame counts. */
const brightest = ({ world }: SchemeCase, part: BlendPart): Target | null => {
  const own = ({ reading }: ReadPass) => reading.target?.stops ?? Number.NEGATIVE_INFINITY;
  for (const pass of part.hasLand ? [...part.passes].sort((a, b) => own(b) - own(a)) : []) {
    const surface = targetSurface(world.stage, world.view.position, middleMoment(pass.light).aim);
    if (!surface || !part.counts(surface.subject)) continue;
    const stops = surfaceStops(world, part.worldFrame, surface);
    return stops === null ? null : { pass, part, surface, stops: stops + stopsFromRatio(part.weight) };
  }
  return null;
};

/** Under a full channel by so much a median still counts as full. */
const whiteStops = 0.1;

/** Where one of these is said of a pass, it is to be darker anyway. */
const darkerAnyway = ['burnt', 'unreachable-level'];

const threeFigures = (value: number): string => String(Number(value.toPrecision(3)));

/** What a blend has lit is so much brighter than its sky that it looks pasted in. Said once, of the brightest. */
export const landOverSky: SchemeRule = (schemeCase) => {
  const { world, scheme } = schemeCase;
  const { mode } = scheme.blend;
  const parts = blendParts(schemeCase);
  const skies = parts.filter(({ hasSky }) => hasSky);
  const named = skies.find(({ frame }) => frame.purpose === 'sky');
  const [land] = parts.flatMap((part) => brightest(schemeCase, part) ?? []).sort((a, b) => b.stops - a.stops);
  if (parts.length < 2 || !named || !land) return [];
  const { pass, frame, cautions } = land.pass;
  if (cautions.some(({ code }) => darkerAnyway.includes(code))) return [];
  const skyStops = skies.map(({ picture }) => skyLevel(world, picture));
  // a sky that is all white in the file tells nothing of how bright it was; nothing outshines it
  if (skyStops.some((stops) => stops !== null && stops > limits.burntStops - whiteStops)) return [];
  const sky = blendedStops(mode, skies, (part) => skyStops[skies.indexOf(part)] as number | null);
  const there = parts.filter(({ counts }) => counts(land.surface.subject));
  const value = blendedStops(mode, there, ({ worldFrame }) => surfaceStops(world, worldFrame, land.surface)) - sky;
  const limit = limits.landOverSkyStops;
  if (!Number.isFinite(value) || value <= limit) return [];
  const share = ratioFromStops(limit - value);
  const what = frame.passes.length > 1 ? `every pass of “${frame.name}” ` : '';
  return [
    {
      code: 'land-over-sky',
      severity: 'note',
      passId: pass.id,
      frameId: frame.id,
      message: `${pass.name}: its target is ${value.toFixed(1)} stops brighter than the sky of “${named.frame.name}”. Land that outshines its sky looks pasted in. Count ${what}${threeFigures(share)} times as long, or give “${frame.name}” the weight ${threeFigures(land.part.weight * share)} in the blend.`,
      value,
      limit,
    },
  ];
};
