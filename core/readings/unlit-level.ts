import { stopsFromMidGrey } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import type { WorldFrame } from '../world/world.ts';

const midGrey = 0.18;

/**
 * Level of open land that no lamp lights: level ground of 18 % under moon and sky, stops from mid-grey; null in the dark.
 * What is white lies up to 2.5 stops over it, what stands upright or in a hollow under it.
 */
export const unlitLevel = ({ lights, exposure }: Pick<WorldFrame, 'lights' | 'exposure'>): number | null => {
  const luxSeconds = lights.reduce((sum, { source, strength, seconds }) => {
    const lux = luminanceOfLinearSrgb(strength) * seconds;
    if (source.kind === 'moon') return sum + lux * Math.max(source.toward[1], 0);
    return source.kind === 'sky' || source.kind === 'dome' ? sum + lux : sum;
  }, 0);
  return luxSeconds > 0 ? stopsFromMidGrey((luxSeconds * midGrey) / Math.PI, exposure) : null;
};
