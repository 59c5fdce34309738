import { rgbOf } from './finish-presets.ts';
import type { Finish } from './schema/setup.ts';

/** The same finish lighter or darker; the reflectance is rounded to thousandths, and never over what is left of the light. */
export const toned = (finish: Finish, factor: number): Finish => {
  const tone = (value: number) => Math.min(Math.round(value * factor * 1000) / 1000, 1 - finish.transmittance);
  const { reflectance } = finish;
  return {
    ...finish,
    reflectance:
      typeof reflectance === 'number' ? tone(reflectance) : (reflectance.map(tone) as [number, number, number]),
  };
};

/** A tone is at most so much darker or lighter than what it is a tone of, and so even over the three colours. */
const [darkest, lightest, uneven] = [0.65, 1.4, 0.02];

/** How much lighter `finish` is than `of`, where it differs in nothing else; null where it is another finish. */
const toneOf = (finish: Finish, of: Finish): number | null => {
  const isAlike =
    finish.transmittance === of.transmittance &&
    finish.gloss === of.gloss &&
    finish.metal === of.metal &&
    finish.refractiveIndex === of.refractiveIndex;
  const [from, to] = [rgbOf(of), rgbOf(finish)];
  if (!isAlike || from.some((v) => v === 0)) return null;
  const ratios = to.map((v, c) => v / (from[c] as number));
  const [least, most] = [Math.min(...ratios), Math.max(...ratios)];
  return most - least <= uneven * most && least >= darkest && most <= lightest ? (least + most) / 2 : null;
};

/**
 * A finish that was a tone of one, as the same tone of another: stones of a wall that is painted keep their spread. What is
 * no tone of it (a lintel, a chimney pot) stays as it is.
 */
export const recoloured = (finish: Finish, from: Finish, to: Finish): Finish => {
  const tone = toneOf(finish, from);
  return tone === null ? finish : toned(to, tone);
};

/** The same for each of some parts with finishes of their own; the same array where nothing changes. */
export const recolouredParts = <P extends { readonly finish: Finish | null }>(
  parts: readonly P[],
  from: Finish,
  to: Finish,
): readonly P[] => {
  const changed = parts.map((part) => {
    const finish = part.finish && recoloured(part.finish, from, to);
    return finish === part.finish ? part : { ...part, finish };
  });
  return changed.some((part, i) => part !== parts[i]) ? changed : parts;
};
