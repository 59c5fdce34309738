import { describe, expect, it } from 'vitest';
import { limits } from '../../../core/cautions/limits.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { cautionsFor, find, still, wallLitBy } from '../support/cautions.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

const camera = { position: [0, -6, 1.5], aim: [0, 0, 1.5] };
const box = (position: readonly number[], widthMetres = 1, heightMetres = 2.5) => ({
  id: 'box',
  name: 'Box',
  finish: { reflectance: 0.18 },
  parts: [{ kind: 'box', position, widthMetres, depthMetres: 1, heightMetres }],
});

// all limits of angle and of darkness are common practice, no published source
describe('near-axis', () => {
  const at = (degrees: number, side: 1 | -1): OnePass => {
    const a = (degrees * Math.PI) / 180;
    return { camera, pass: still([5 * side * Math.sin(a), -5 * Math.cos(a), 1.5], [0, 0, 1.5]) };
  };
  it.each([
    [0.5, 'danger', 20],
    [19.9, 'danger', 20],
    [20.1, 'note', 30],
    [29.9, 'note', 30],
  ] as const)('a lamp %d degrees off the axis is a %s, limit %d, on both sides', (degrees, severity, limit) => {
    for (const side of [1, -1] as const) {
      const caution = find(at(degrees, side), 'near-axis');
      expect(caution).toMatchObject({ severity, limit, passId: 'pass' });
      expect(caution?.value).toBeCloseTo(degrees, 6);
    }
  });
  it.each([30.1, 90, 180])('a lamp %d degrees off is none', (degrees) => {
    expect(find(at(degrees, 1), 'near-axis')).toBeUndefined();
  });
  it('counts height too: over the camera at 40 degrees is none', () => {
    expect(
      find({ camera, pass: still([0, -5, 1.5 + 5 * Math.tan((40 * Math.PI) / 180)], [0, 0, 1.5]) }, 'near-axis'),
    ).toBeUndefined();
  });
});

describe('lamp-in-frame', () => {
  const lamp = { diameterMm: 2 };
  const towardLens = still([0, 4, 1.5], [0, -6, 1.5]);
  const turnedAway = still([0, 4, 1.5], [0, 9, 1.5]);

  it('is a danger when the bare lamp shines into the lens, a warning when it is turned away', () => {
    expect(find({ camera, lamp, pass: towardLens }, 'lamp-in-frame')).toMatchObject({ severity: 'danger', value: 1 });
    const onStand = { ...turnedAway, held: 'stand' };
    expect(find({ camera, lamp, pass: onStand }, 'lamp-in-frame')?.severity).toBe('warning');
  });
  it('is none where whoever holds it stands before it, whether or not people are drawn', () => {
    for (const holder of [true, false])
      expect(
        find({ camera: { ...camera, drawn: { holder } }, lamp, pass: turnedAway }, 'lamp-in-frame'),
      ).toBeUndefined();
  });
  it('goes when a box hides the lamp, and comes back when the box is too low or beside it', () => {
    expect(find({ camera, lamp, pass: towardLens, subjects: [box([0, 2, 0])] }, 'lamp-in-frame')).toBeUndefined();
    expect(
      find({ camera, lamp, pass: towardLens, subjects: [box([0, 2, 0], 1, 1.49)] }, 'lamp-in-frame'),
    ).toBeDefined();
    expect(find({ camera, lamp, pass: towardLens, subjects: [box([0.51, 2, 0])] }, 'lamp-in-frame')).toBeDefined();
    expect(find({ camera, lamp, pass: towardLens, subjects: [box([0, 5, 0])] }, 'lamp-in-frame')).toBeDefined();
  });
  // a 24 mm lens on a 36 mm sensor sees 0.75 m to each side for each metre away
  it.each([
    [7.4, true],
    [7.6, false],
    [-7.4, true],
    [-7.6, false],
  ])('10 m from the lens and %d m to the side it is seen: %s', (east, seen) => {
    const pass = still([east, 4, 1.5], [0, 0, 1.5]);
    expect(find({ camera, lamp, pass }, 'lamp-in-frame') !== undefined).toBe(seen);
  });
  it('is found when only a moment of a walk crosses the frame, and says for how much of it', () => {
    const walk = [
      { time: 0, position: [-9, 4, 1.5], aim: [0, 0, 1.5] },
      { time: 1, position: [9, 4, 1.5], aim: [0, 0, 1.5] },
    ];
    const caution = find({ camera, lamp, pass: { waypoints: walk } }, 'lamp-in-frame');
    expect(Math.abs((caution?.value ?? 0) - 7.5 / 9)).toBeLessThanOrEqual(0.06);
  });
});

describe('burnt and too-dark', () => {
  const litBy = (stops: number): OnePass => wallLitBy(stops, 1);

  // saturation at 78/S, mid-grey at 10/S: log2 7.8 = 2.963 stops (ISO 12232)
  it.each([
    [2.95, false],
    [2.98, true],
    [6, true],
  ])('%d stops over mid-grey is burnt: %s', (stops, burnt) => {
    const caution = find(litBy(stops), 'burnt');
    expect(caution !== undefined).toBe(burnt);
    if (caution) {
      expect(caution.severity).toBe('danger');
      expect(caution.value).toBeCloseTo(stops, 3);
      expect(Math.abs((caution.limit ?? 0) - 2.963)).toBeLessThanOrEqual(5e-4);
    }
  });
  it('a warm lamp fills red first: burnt is said, and which channel, while the whole is still under the limit', () => {
    const warm = litBy(2.5);
    const caution = find({ ...warm, lamp: { ...warm.lamp, temperatureKelvin: 2200 } }, 'burnt');
    expect(caution?.message).toContain('red is');
    expect(caution?.value).toBeGreaterThan(2.963);
    expect(find(warm, 'burnt')).toBeUndefined();
  });
  it('says what to do instead: 6 stops over at 5 m, 7.5 over the night level, means 2^(7.5/2) = 13.5 times as far, 67 m', () => {
    const message = find(litBy(6), 'burnt')?.message;
    expect(message).toContain('For your night level, 1.5 under mid-grey');
    expect(message).toContain('7.5 stops too bright');
    expect(message).toContain('Step back to 67 m');
  });

  it.each([
    [-3.98, false],
    [-4.02, true],
    [-9, true],
  ])('%d stops from mid-grey is too dark: %s', (stops, dark) => {
    const caution = find(litBy(stops), 'too-dark');
    expect(caution !== undefined).toBe(dark);
    if (caution) expect(caution).toMatchObject({ severity: 'warning', limit: limits.tooDarkStops });
  });
  it('light that no count makes enough asks to come closer or raise the ISO, a beam that misses asks to be aimed again', () => {
    expect(find(litBy(-9), 'too-dark')?.message).toMatch(/too dark\. Come to [\d.]+ m\. Or raise the ISO/);
    // the aim lies behind a wall: the lens sees its front, 31 degrees off the axis of a beam 8 degrees wide
    const narrow = { shape: 'spot', beamDegrees: 8, spillDegrees: 179, spillShare: 0.002 };
    const missed = {
      camera: { position: [0, -6, 1.5], aim: [0, 0, 1.5] },
      lamp: { beam: narrow },
      subjects: [box([0, 0, 0], 12)],
      pass: still([5, -6, 1.5], [0, 20, 1.5]),
    };
    expect(find(missed, 'too-dark')?.message).toContain('Aim it again');
  });
  it('no light on the face is right for back light, a note of its own for a lamp beside it', () => {
    const from = (position: readonly number[]) => ({ ...litBy(0), pass: still(position, [0, 0, 1.5]) });
    expect(find(from([0, 5, 1.5]), 'too-dark')).toBeUndefined();
    const beside = find(from([5, 0.3, 1.5]), 'too-dark');
    expect(beside?.severity).toBe('note');
    expect(beside?.value).toBeUndefined();
  });
  it('two passes, each 2.5 stops over, burn together: 3.5 is past the sensor’s 2.96 (light adds)', () => {
    const setup = onePassSetup(litBy(2.5));
    const [scheme] = setup.schemes as [Scheme];
    const [frame] = scheme.frames as [Scheme['frames'][number]];
    const [pass] = frame.passes as [(typeof frame.passes)[number]];
    const codesOf = (passes: (typeof frame.passes)[number][]) =>
      reportScheme(setup, { ...scheme, frames: [{ ...frame, passes }] }).cautions.filter(
        ({ code }) => code === 'burnt',
      );
    expect(codesOf([pass])).toEqual([]);
    const together = codesOf([pass, { ...pass, id: 'second' }]);
    expect(together.length).toBe(2);
    for (const caution of together) expect(caution.value).toBeCloseTo(3.5, 1);
  });
});

describe('inside-subject, the camera', () => {
  it('a camera in a box is told, without a pass; outside it is not', () => {
    const pass = still([5, 0, 1.5], [0, 0, 1.5]);
    const inside = find(
      { camera: { position: [0, 0, 1], aim: [0, 5, 1] }, subjects: [box([0, 0, 0])], pass },
      'inside-subject',
    );
    expect(inside?.message).toContain('camera is inside “Box”');
    expect(inside?.passId).toBeUndefined();
    expect(find({ camera, subjects: [box([0, 3, 0])], pass }, 'inside-subject')).toBeUndefined();
  });
});

describe('lamp-below-ground', () => {
  it.each([
    [-0.01, true],
    [0.01, false],
    [0, false],
  ])('a lamp at %d m: %s', (up, buried) => {
    const caution = find({ camera, pass: still([3, 0, up], [0, 0, 1]) }, 'lamp-below-ground');
    expect(caution !== undefined).toBe(buried);
    if (caution) expect(caution).toMatchObject({ severity: 'danger', value: up, limit: 0 });
  });
  it('is told alone, though the lamp is near the axis as well', () => {
    const what: OnePass = { camera, pass: still([0, -5, -0.2], [0, 0, 1.5]) };
    expect(cautionsFor(what).map(({ code }) => code)).toEqual(['lamp-below-ground']);
  });
});

describe('inside-subject', () => {
  it.each([
    [[0, 1, 1], true],
    [[0.49, 1, 0.02], true],
    [[0.51, 1, 1], false],
    [[0, 1.51, 1], false],
    [[0, 1, 2.51], false],
    [[0, 1, 2.49], true],
  ] as const)('a lamp at %j, box 1 x 1 x 2.5 m at [0, 1, 0]: %s', (position, inside) => {
    const what = { camera, lamp: { diameterMm: 1 }, pass: still(position, [0, -6, 1]), subjects: [box([0, 1, 0])] };
    const caution = find(what, 'inside-subject');
    expect(caution !== undefined).toBe(inside);
    if (caution) {
      expect(caution.message).toContain('Box');
      expect(cautionsFor(what)).toHaveLength(1);
    }
  });
});

describe('inside-subject, in cloth', () => {
  it('says nothing of a lamp in a closed tent: cloth lets its light out', () => {
    const cloth = { ...box([0, 1, 0]), finish: { reflectance: 0.4, transmittance: 0.3 } };
    const what = { camera, lamp: { diameterMm: 1 }, pass: still([0, 1, 1], [0, -6, 1]), subjects: [cloth] };
    expect(find(what, 'inside-subject')).toBeUndefined();
  });
});

describe('the list', () => {
  it('stands worst first, and each names its pass, or its frame', () => {
    const all = cautionsFor({
      camera,
      lamp: { diameterMm: 2 },
      pass: still([0.3, -1, 1.5], [0, 0, 1.5]),
      subjects: [box([0, 0.5, 0], 4, 3)],
    });
    const order = ['danger', 'warning', 'note'];
    const ranks = all.map(({ severity }) => order.indexOf(severity));
    expect(all.length).toBeGreaterThanOrEqual(2);
    expect(ranks).toEqual([...ranks].sort());
    for (const caution of all) expect(caution.message).toMatch(caution.passId ? /^Pass:/ : /^Frame:/);
  });
});
