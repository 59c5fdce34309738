import { describe, expect, it } from 'vitest';
import { cardText } from '../../../core/card/card-text.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

const setup = stoneSetup(passFrom('Key', 2.5, 6, 0.5, { levelPercent: 25, gels: [{ name: '1/4 CTO' }], strokes: 2 }));
const card = cardOf(setup);

describe('cardText', () => {
  it('tells things in the order of the printed card', () => {
    const text = cardText(card);
    const order = [
      'Test · Scheme',
      'Moon:',
      'Dark:',
      'Permission:',
      'PASSES',
      'CAMERA',
      'IF IT CAME OUT',
      'WHERE NOT TO STAND',
      'ALWAYS',
    ];
    const places = order.map((words) => text.indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('has everything of a row, with a box to tick and a line to write on', () => {
    const text = cardText(card);
    expect(text).toContain(' 1. [ ] Key\n      2:30 (right 105°), 8 paces (6.0 m), knee (0.50 m)\n');
    expect(text).toContain('aim: stone · Torch 25 % · gel: 1/4 CTO\n');
    expect(text).toContain('COUNT 3 s, at 0 s · strokes 2 · frame 1\n');
    expect(text).toMatch(/what I did: _{10,}/);
    expect(text).toContain('18 mm, f/8, 10 s, ISO 400, 4200 K, focus 8.0 m, delay 2 s, count 1');
  });

  it('goes by the settings of the document', () => {
    const other = { ...setup, card: { ...setup.card, lengths: 'feet' as const, permission: 'Asked at the farm' } };
    const text = cardText(cardOf({ ...other, walking: { ...setup.walking, paceMetres: 0.6 } }));
    // 6 m are 10 paces of 0.6 m, and 19.7 ft
    expect(text).toContain('10 paces (19.7 ft)');
    expect(text).toContain('Permission: Asked at the farm\n');
    expect(text).not.toMatch(/\d m[ ),]/);
  });
});
