import { describe, expect, it } from 'vitest';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { boxAt, cautionsOfSetup, find, still, wallLitBy } from '../support/cautions.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

const messageOf = (setup: Setup, code: string) => cautionsOfSetup(setup).find((each) => each.code === code)?.message;
const atNightLevel = (what: OnePass, nightLevelStops: number): Setup => ({ ...onePassSetup(what), nightLevelStops });

describe('burnt', () => {
  it('goes by the night level of the setup, under mid-grey or over it', () => {
    expect(messageOf(atNightLevel(wallLitBy(6, 1), 1), 'burnt')).toContain('For your night level, 1 over mid-grey: ');
    expect(messageOf(atNightLevel(wallLitBy(6, 1), -2), 'burnt')).toContain('For your night level, 2 under mid-grey: ');
  });

  it('calls a night level of nought mid-grey, and goes on in one sentence', () => {
    expect(messageOf(atNightLevel(wallLitBy(6, 1), 0), 'burnt')).toMatch(
      /For your night level, mid-grey: (at its lowest|it has no lower|turn the lamp|count )/,
    );
    expect(messageOf(atNightLevel(wallLitBy(-12, 1), 0), 'too-dark')).toContain(
      'For your night level, mid-grey: at full level, lit for all',
    );
  });
});

describe('too-dark', () => {
  it('advises nothing for a lamp that stays lit and has the night level already', () => {
    const lit = wallLitBy(-4.1, 10);
    const stays = { ...lit, pass: { ...lit.pass, held: 'stand', off: 10 } };
    // wanted -4, there -4.1: within the third of a stop that a lamp left alone is allowed
    expect(messageOf(atNightLevel(stays, -4), 'too-dark')).toBe('Pass: 4.1 stops under mid-grey at the target.');
    expect(messageOf(atNightLevel(stays, -1), 'too-dark')).toContain('For your night level, 1 under mid-grey: ');
  });

  it('says why no light leaves a lamp at level nought', () => {
    const lit = wallLitBy(0, 1);
    expect(find({ ...lit, pass: { ...lit.pass, levelPercent: 0 } }, 'too-dark')).toMatchObject({
      severity: 'note',
      message: 'Pass: no light leaves the lamp: its level, or a gel, lets none out.',
    });
  });

  it('says that a snoot keeps the light off where the lens sees a wall before the aim', () => {
    // the lamp stands 5 m beside the lens and points atan(5 / 26) = 11 degrees to its left, at a place behind the wall;
    // where the lens sees the wall before it is atan(5 / 5.5) = 42 degrees to its left
    const snooted = (snootDegrees: number | null): OnePass => ({
      camera: { position: [0, -6, 1.5], aim: [0, 0, 1.5] },
      subjects: [boxAt('wall', [0, 0, 0], [12, 1, 2.5])],
      pass: { ...still([5, -6, 1.5], [0, 20, 1.5]), snootDegrees },
    });
    expect(find(snooted(20), 'too-dark')?.message).toBe(
      'Pass: its snoot keeps the light from the surface that you see at its aim.',
    );
    // 31 degrees off its axis: a snoot of 70 lets that out, one of 60 does not
    expect(find(snooted(60), 'too-dark')?.message).toContain('its snoot');
    for (const open of [70, null]) expect(find(snooted(open), 'too-dark')?.message ?? '').not.toContain('snoot');
  });
});
