import { describe, expect, it } from 'vitest';
import { boxAt, cautionsOfSetup, find, still } from '../support/cautions.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

const camera = { position: [0, 0, 1.5], aim: [0, 10, 1.5], focalLengthMm: 24 };
const frame = { aperture: 2.8, focusMetres: 5 };

// thin lens (checkvalues.md, depth of field): H = f^2 / (N c) + f, near = s (H - f) / (H + s - 2f), far = s (H - f) / (H - s);
// f/2.8 is really 2 sqrt 2, c the diagonal / 1442
const [f, s] = [24, 5000];
const H = f ** 2 / (2 * Math.SQRT2 * (Math.hypot(36, 24) / 1442)) + f;
const near = (s * (H - f)) / (H + s - 2 * f) / 1000;
const far = (s * (H - f)) / (H - s) / 1000;

/** A wall whose front stands so far from the lens, lit. */
const wallAt = (metres: number): OnePass => ({
  camera,
  frame,
  pass: still([3, metres - 2, 1.5], [0, metres, 1.5]),
  subjects: [boxAt('wall', [0, metres + 0.5, 0], [2, 1, 3])],
});

describe('out-of-depth', () => {
  it.each([
    [near - 0.02, near],
    [far + 0.2, far],
  ])('a target %d m away is soft past the limit of %d m', (metres, limit) => {
    const caution = find(wallAt(metres), 'out-of-depth');
    expect(caution).toMatchObject({ severity: 'warning', passId: 'pass', frameId: 'frame' });
    expect(caution?.value).toBeCloseTo(metres, 4);
    expect(caution?.limit).toBeCloseTo(limit, 4);
  });
  it('tells a hundred metres and more without tenths', () => {
    expect(find(wallAt(40), 'out-of-depth')?.message).toContain('40.0 m');
    expect(find(wallAt(140), 'out-of-depth')?.message).toContain('140 m');
  });
  it.each([near + 0.02, 5, far - 0.2])('one %d m away is sharp', (metres) => {
    expect(find(wallAt(metres), 'out-of-depth')).toBeUndefined();
  });

  /** A long low block that begins so far from the lens, lit at 5 m. */
  const blockFrom = (metres: number): OnePass => ({
    camera,
    frame,
    pass: still([3, 4, 1.5], [0, 5, 1]),
    subjects: [boxAt('block', [0, (metres + 8) / 2, 0], [2, 8 - metres, 1])],
  });
  it('the near part of what is lit counts, though the target is sharp: a note, of the frame', () => {
    const caution = find(blockFrom(near - 0.05), 'out-of-depth');
    expect(caution).toMatchObject({ severity: 'note', frameId: 'frame' });
    expect(caution?.passId).toBeUndefined();
    expect(caution?.value).toBeCloseTo(near - 0.05, 4);
    expect(caution?.message).toContain('“block”');
    expect(find(blockFrom(near + 0.05), 'out-of-depth')).toBeUndefined();
  });
  it('another frame that has the near part sharp makes it go', () => {
    const setup = onePassSetup(blockFrom(near - 0.05));
    const [scheme] = setup.schemes as [(typeof setup.schemes)[number]];
    const [painted] = scheme.frames as [(typeof scheme.frames)[number]];
    const step = { ...painted, id: 'step', focusMetres: 3, passes: [] };
    const codes = cautionsOfSetup({ ...setup, schemes: [{ ...scheme, frames: [painted, step] }] }).map(
      ({ code }) => code,
    );
    expect(codes).not.toContain('out-of-depth');
  });
});
