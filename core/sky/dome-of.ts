import { type DomeLight, domeLight } from './dome-light.ts';
import type { GlowDome } from './glow-dome.ts';
import { glowLuminance } from './glow-luminance.ts';
import { skyAt } from './sky-at.ts';
import type { SkyInput } from './sky-input.ts';
import { skyLuminance } from './sky-luminance.ts';

/**
 * What a dome of light is of: the whole sky but the glow of towns and the narrow glow round the moon, which goes with the
 * moon's own light; or the glow of a town by its shape, ten degrees up 1 cd/m^2.
 */
export type DomeOf =
  | { readonly part: 'sky'; readonly input: SkyInput; readonly domes: readonly GlowDome[] }
  | { readonly part: 'glow'; readonly dome: GlowDome; readonly northRadians: number };

/** None is dark: the sky has its stars at least, and a glow is taken by its shape. */
const make = (of: DomeOf): DomeLight => {
  if (of.part === 'glow') return domeLight(glowLuminance(of.dome, of.northRadians), null) as DomeLight;
  const state = skyAt(of.input);
  const luminance = skyLuminance(state, of.domes, { withoutStarsToV8: false, withoutMoonHalo: true });
  return domeLight(luminance, state.moon.towardSeen) as DomeLight;
};

/** How many domes are kept: those of a few hours and towns. */
const mostKept = 24;
const byText = new Map<string, DomeLight>();
const byObject = new WeakMap<DomeOf, DomeLight>();

const known = (of: DomeOf): DomeLight => {
  const text = JSON.stringify(of);
  const before = byText.get(text);
  if (before !== undefined) {
    // put it last: a map keeps the order of insertion
    byText.delete(text);
    byText.set(text, before);
    return before;
  }
  const made = make(of);
  if (byText.size >= mostKept) byText.delete(byText.keys().next().value as string);
  byText.set(text, made);
  return made;
};

/** A dome as a light, worked out when first asked for. */
export const domeLightOf = (of: DomeOf): DomeLight => {
  const before = byObject.get(of);
  if (before !== undefined) return before;
  const made = known(of);
  byObject.set(of, made);
  return made;
};
