import type { GelFilter } from '../../../core/colour/gel.ts';
import { gelFromColour } from '../../../core/colour/gel-from-colour.ts';
import { type GelPreset, gelPresets } from '../../../core/colour/gel-presets.ts';
import type { Gel } from '../../../core/setup/schema/setup.ts';
import { hexFromLinear } from '../ui/hex-colour.ts';
import { signed } from '../ui/words.ts';

/** How a gel is told: by the trade name of a preset, by its shift, or by its colour. */
export type GelKind = 'preset' | 'shift' | 'colour';

const isPreset = (gel: Gel, { name, ...filter }: GelPreset): boolean =>
  gel.name === name &&
  gel.shiftMired === filter.shiftMired &&
  gel.transmission === filter.transmission &&
  JSON.stringify(gel.colour) === JSON.stringify(filter.colour);

export const kindOfGel = (gel: Gel): GelKind => {
  if (gelPresets.some((preset) => isPreset(gel, preset))) return 'preset';
  return gel.colour ? 'colour' : 'shift';
};

/** What a gel of one's own is called until it has a name: "+100 mired", "#ff8800". */
const plainName = ({ colour, shiftMired }: GelFilter): string =>
  colour ? hexFromLinear(colour) : `${signed(shiftMired, 0)} mired`;

const gelOf = (name: string, { shiftMired, transmission, colour }: GelFilter): Gel => ({
  name,
  shiftMired,
  transmission,
  colour: colour ? [...colour] : null,
});

/** A gel of one's own with other numbers. A name that told its numbers follows them, any other stays. */
export const changedGel = (gel: Gel, part: Partial<GelFilter>): Gel => {
  const next = { ...gel, ...part };
  return gelOf(gel.name === plainName(gel) ? plainName(next) : gel.name, next);
};

/** A straw-like orange to begin with. */
const firstColour = [1, 0.5, 0.13] as const;

/**
 * The gel that a choice from the list means, or null for none. A free shift starts from the gel that was there.
 *
 * @param choice the name of a preset, "shift", "colour", or "" for none
 */
export const chosenGel = (choice: string, before: Gel | null): Gel | null => {
  const preset = gelPresets.find(({ name }) => name === choice);
  if (preset) return gelOf(preset.name, preset);
  if (choice === 'shift') {
    const from = before && !before.colour ? before : { shiftMired: 0, transmission: 1 };
    const filter = { shiftMired: from.shiftMired, transmission: from.transmission, colour: null };
    return gelOf(plainName(filter), filter);
  }
  if (choice !== 'colour') return null;
  const filter = gelFromColour(firstColour);
  return gelOf(plainName(filter), filter);
};
