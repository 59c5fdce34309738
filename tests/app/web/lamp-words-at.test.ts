import { describe, expect, it } from 'vitest';
import { lampWordsAt, wayWordsY } from '../../../app/web/ui/lamp-words-at.ts';

const [way, where] = ['16 m · 32 s', '6:00 · 9.0 m'];
/** Cap height and width of a letter on the plan. */
const [tall, wide] = [9, 6];

describe('words on the plan', () => {
  it('of a way stand a little over its middle where its lamp is far', () => {
    expect(wayWordsY([40, 0], way, [-150, 120], where)).toBe(-6);
  });

  it('of a way lie neither on its lamp nor on the lamp’s words, wherever the lamp stands near six o’clock', () => {
    const camera = [0, 210] as const;
    for (let x = -60; x <= 60; x += 10)
      for (let y = 90; y <= 240; y += 5) {
        const middle = [(x + camera[0]) / 2, (y + camera[1]) / 2] as const;
        const at = wayWordsY(middle, way, [x, y], where);
        const [wx, wy] = lampWordsAt([x, y]);
        const apartX = Math.abs(middle[0] - x - wx) >= ((way.length + where.length) * wide) / 2;
        expect(apartX || Math.abs(at - y - wy) >= tall, `${x}, ${y}`).toBe(true);
        const onDisc = Math.abs(middle[0] - x) < (way.length * wide) / 2 && at > y - 8 && at - tall < y + 8;
        expect(onDisc, `${x}, ${y}`).toBe(false);
      }
  });
});
