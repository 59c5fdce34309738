import { describe, expect, it } from 'vitest';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import { changed, goodSetup } from './good-setup.ts';

const good = () => parseSetup(JSON.stringify(goodSetup()));

/** Every object and list inside a value, itself included. */
const inside = (value: unknown): object[] =>
  typeof value === 'object' && value !== null ? [value, ...Object.values(value).flatMap(inside)] : [];

describe('parseSetup', () => {
  it('fills in what the file leaves out, with the defaults that the schema documents', () => {
    const setup = good();
    expect(setup.note).toBe('');
    expect(setup.place).toMatchObject({ moonlight: null, glowDomes: [], hazeVisibilityKm: null, northDegrees: 0 });
    expect(setup.camera).toMatchObject({ rollDegrees: 0, focalLengthMm: 24, sensor: { widthMm: 36, heightMm: 24 } });
    expect(setup.subjects[0]).toMatchObject({ position: [0, 0, 0], turnDegrees: 0 });
    expect(setup.subjects[0]?.parts[0]).toMatchObject({ tiltDegrees: 0, roundMetres: 0, dimples: null, finish: null });
    expect(setup.schemes[0]?.camera).toBeNull();
    expect(setup.schemes[0]?.blend.mode).toBe('lighten');
    expect(setup.schemes[0]?.frames[0]?.passes).toEqual([]);
    expect(setup.schemes[0]?.frames[1]?.passes[1]).toMatchObject({ on: 0, levelPercent: 100, held: 'hand', gels: [] });
  });

  it('gives every field of the schema a value: nothing inside is undefined', () => {
    const values = inside(good()).flatMap((each) => Object.values(each));
    expect(values.length).toBeGreaterThan(100);
    expect(values).not.toContain(undefined);
  });

  it('keeps what the file says', () => {
    const setup = good();
    expect(setup.lamps[0]).toMatchObject({ id: 'torch', output: { from: 'lumens', lumens: 100 } });
    expect(setup.schemes[0]?.frames[1]?.passes[0]?.waypoints[1]?.position).toEqual([6, 6, 1]);
  });

  it('is frozen to the bottom, and its input is not', () => {
    const input = goodSetup();
    const parts = inside(validateSetup(input));
    expect(parts.length).toBeGreaterThan(40);
    expect(parts.filter((part) => !Object.isFrozen(part))).toEqual([]);
    expect(inside(input).filter((part) => Object.isFrozen(part))).toEqual([]);
  });

  it('takes its own result again, unchanged', () => {
    expect(validateSetup(good())).toEqual(good());
  });

  it('gives two setups lists of their own: defaults are not shared', () => {
    const bare = changed((setup) => {
      delete setup.ground;
      delete setup.subjects;
      delete setup.schemes[0].blend;
    });
    const [a, b] = [parseSetup(bare), parseSetup(bare)];
    expect(a.subjects).not.toBe(b.subjects);
    expect(a.place.glowDomes).not.toBe(b.place.glowDomes);
  });

  it('turns minus nought into nought, which JSON can keep', () => {
    const setup = parseSetup(JSON.stringify(goodSetup()).replace('[0,0,1.5]', '[-0,-0.0,1.5]'));
    expect(setup.camera.position.map((v) => Object.is(v, -0))).toEqual([false, false, false]);
  });

  it('takes names in any script, whole emoji, and notes of several lines', () => {
    const setup = parseSetup(
      changed((s) => {
        s.name = 'Çatalhöyük 小屋 🌙';
        s.note = 'one\n\ttwo\r\nthree';
      }),
    );
    expect([setup.name, setup.note]).toEqual(['Çatalhöyük 小屋 🌙', 'one\n\ttwo\r\nthree']);
  });
});
