import { stopsFromMidGrey } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { skyOf } from '../readings/frame-sky.ts';
import { percentile } from '../readings/percentile.ts';
import { skyDirections } from '../readings/sky-directions.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { blendParts } from './blend-parts.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

/** Median of the sky that a frame sees, stops from mid-grey, be it more than the sensor holds. */
const skyStopsOf = (world: World, frame: WorldFrame): number => {
  const directions = skyDirections(world);
  const isSky = ({ source }: WorldLight) => source.kind === 'sky' || source.kind === 'seen-sky';
  const { seconds } = frame.lights.find(isSky) as WorldLight;
  const luminanceAt = skyOf(world.stage, frame);
  const values = directions.map((toward) => luminanceOfLinearSrgb(luminanceAt(toward)) * seconds);
  return values.length > 0 ? stopsFromMidGrey(percentile(values, 0.5), frame.exposure) : Number.NEGATIVE_INFINITY;
};

/** Twilight, moon or towns fill the sensor over half of the sky, or all of it. The frame that has most of it is told. */
export const skyBurnt: SchemeRule = (schemeCase) => {
  const [worst] = blendParts(schemeCase)
    .filter(({ hasSky }) => hasSky)
    .map(({ frame, worldFrame }) => ({ frame, value: skyStopsOf(schemeCase.world, worldFrame) }))
    .sort((a, b) => b.value - a.value);
  const limit = limits.burntStops;
  if (!worst || worst.value <= limit) return [];
  const { frame, value } = worst;
  return [
    {
      code: 'sky-burnt',
      severity: 'warning',
      frameId: frame.id,
      message: `${frame.name}: the sky is white, ${(value - limit).toFixed(1)} stops over what the sensor holds. Expose at least that much less, or take it when the sky is darker.`,
      value,
      limit,
    },
  ];
};
