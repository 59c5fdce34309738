import { describe, expect, it } from 'vitest';
import { changedGel, chosenGel, kindOfGel } from '../../../app/web/inspector/gel-kinds.ts';
import { hexFromLinear, linearFromHex } from '../../../app/web/ui/hex-colour.ts';
import { gelFromColour } from '../../../core/colour/gel-from-colour.ts';
import { gelPresets } from '../../../core/colour/gel-presets.ts';
import type { Gel } from '../../../core/setup/schema/setup.ts';

describe('gels chosen from the list', () => {
  it.each(gelPresets.map((preset) => [preset.name, preset] as const))(
    '%s keeps its numbers and its colour',
    (name, preset) => {
      const gel = chosenGel(name, null) as Gel;
      expect(gel).toEqual(preset);
      expect(kindOfGel(gel)).toBe('preset');
    },
  );

  it('a free shift starts from the gel that was there, and its name follows its numbers', () => {
    const shift = chosenGel('shift', chosenGel('Full CTO', null)) as Gel;
    expect(shift).toMatchObject({ name: '+159 mired', shiftMired: 159, transmission: 0.55, colour: null });
    expect(kindOfGel(shift)).toBe('shift');
    expect(changedGel(shift, { shiftMired: -40 }).name).toBe('−40 mired');
    expect(changedGel({ ...shift, name: 'My warm one' }, { shiftMired: 10 }).name).toBe('My warm one');
  });

  it('a colour is named by its code and lets through its luminance (IEC 61966-2-1: green 0.7152, abs 1e-4)', () => {
    const colour = chosenGel('colour', null) as Gel;
    expect(kindOfGel(colour)).toBe('colour');
    const green = changedGel(colour, gelFromColour(linearFromHex('#0f0') ?? [0, 0, 0]));
    expect(green.name).toBe('#00ff00');
    expect(Math.abs(green.transmission - 0.7152)).toBeLessThanOrEqual(1e-4);
    expect(chosenGel('', colour)).toBeNull();
  });
});

describe('colour codes', () => {
  it('come back as they were, all 256 values of each channel', () => {
    for (let v = 0; v < 256; v++) {
      const hex = `#${[v, 255 - v, (v * 7) % 256].map((c) => c.toString(16).padStart(2, '0')).join('')}`;
      expect(hexFromLinear(linearFromHex(hex) ?? [0, 0, 0])).toBe(hex);
    }
  });

  it.each(['', '#ff', '#12345', 'orange', '#gg0000', '#ff8800ff'])('"%s" is none', (text) => {
    expect(linearFromHex(text)).toBeNull();
  });
});
