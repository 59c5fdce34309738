import { seededRandom } from '../../../../core/geometry/random.ts';
import type { Position } from '../../../../core/setup/schema/setup.ts';

/** What a random edit is made of: numbers as fields take them, often at the very ends of their ranges. */
export interface Dice {
  share(): number;
  /** A number from low to high, its ends included. */
  between(low: number, high: number): number;
  whole(low: number, high: number): number;
  /** One of a list; undefined of an empty one. */
  maybe<T>(list: readonly T[]): T | undefined;
  /** One of a list that is not empty. */
  one<T>(list: readonly T[]): T;
  flag(): boolean;
  /** A place as dragging or typing gives it, now and then past the edge of the world. */
  place(): Position;
  text(): string;
}

const texts = ['Key', 'Key 2', '', '  ', 'Ö'.repeat(90), '🔦 lamp\n two', 'a\u0000b', '<b>x</b>', 'Stone'];

export const diceOf = (seed: number): Dice => {
  const share = seededRandom(seed);
  const between = (low: number, high: number): number => {
    const at = share();
    if (at < 0.08) return low;
    if (at > 0.92) return high;
    const value = low + (high - low) * share();
    // as typed with two decimals, or as a pointer leaves it
    return share() < 0.5 ? Math.min(Math.max(Number(value.toFixed(2)), low), high) : value;
  };
  const whole = (low: number, high: number) => Math.min(low + Math.floor(share() * (high - low + 1)), high);
  const maybe = <T>(list: readonly T[]): T | undefined => list[whole(0, Math.max(list.length - 1, 0))];
  const place = (): Position => {
    const [reach, up] = share() < 0.1 ? [9000, 4000] : [20, 4];
    return [between(-reach, reach), between(-reach, reach), between(-up / 8, up)];
  };
  return {
    share,
    between,
    whole,
    maybe,
    one: (list) => maybe(list) as (typeof list)[number],
    flag: () => share() < 0.5,
    place,
    text: () => texts[whole(0, texts.length - 1)] as string,
  };
};
