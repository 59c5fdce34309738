import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { irradianceSample } from '../../../core/trace/irradiance.ts';
import { drawnByWeight, momentsPerSample, momentsTaken } from '../../../core/trace/moments-taken.ts';
import { momentShift } from '../../../core/trace/sequence.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../support/scenes.ts';

const post = subjectOf('post', [{ kind: 'cylinder', radiusMetres: 0.4, heightMetres: 3, position: [0, 2, 0] }]);
const stage = stageWith(post);
const bare = stageWith();
const lamp = standing([-4, 1.5, -4], [0, 0, 0], discEmitter(0.05));
const walked = {
  ...lamp,
  path: [
    { seconds: 0, position: [-4, 1.5, -4], aim: [0, 0, 0] },
    { seconds: 1, position: [4, 1.5, -4], aim: [0, 0, 0] },
  ],
} as const;
const receiver = { place: [0, 0, 0], shadowOrigin: [0, 1e-4, 0], normal: [0, 1, 0] } as const;

describe('momentsTaken', () => {
  it('a lamp that stands has one moment; one on its way has one in each of fifteen equal parts of its on-time', () => {
    expect(momentsTaken(stage, lamp, 3).poses).toHaveLength(1);
    for (const sample of [0, 1, 7, 100]) {
      const { poses } = momentsTaken(stage, walked, sample);
      expect(poses).toHaveLength(momentsPerSample);
      poses.forEach(({ position }, m) => {
        const share = (position[0] + 4) / 8;
        expect(share).toBeGreaterThanOrEqual(m / momentsPerSample - 1e-12);
        expect(share).toBeLessThan((m + 1) / momentsPerSample + 1e-12);
      });
    }
  });

  it('the first sample has the middle of the pass among its moments', () => {
    expect(momentsTaken(stage, walked, 0).poses[7]?.position[0]).toBeCloseTo(0, 12);
  });

  it('2, 4, 8 … samples together are even steps; of any other number no gap is wider than two of as many (van der Corput)', () => {
    for (const n of [2, 3, 8, 64, 100, 1000]) {
      const shifts = Array.from({ length: n }, (_, s) => momentShift(s)).sort((a, b) => a - b);
      const gaps = shifts.map((shift, i) => (shifts[i + 1] ?? (shifts[0] as number) + 1) - shift);
      expect(Math.max(...gaps) * n).toBeLessThanOrEqual(Number.isInteger(Math.log2(n)) ? 1 : 2);
    }
  });
});

describe('drawnByWeight', () => {
  it('draws each as often as it weighs (abs 0.01), never one that weighs nothing', () => {
    const weights = [0, 3, 0, 1, 4, 0];
    const random = seededRandom(5);
    const counts = weights.map(() => 0);
    const draws = 20_000;
    for (let i = 0; i < draws; i++) {
      const drawn = drawnByWeight(weights, random());
      counts[drawn] = (counts[drawn] as number) + 1;
    }
    counts.forEach((count, i) => {
      expect(Math.abs(count / draws - (weights[i] as number) / 8)).toBeLessThanOrEqual(0.01);
    });
    expect(counts[0]).toBe(0);
    expect(drawnByWeight(weights, 0)).toBe(1);
    expect(drawnByWeight(weights, 1 - 1e-16)).toBe(4);
  });
  it('draws none where nothing weighs', () => {
    expect(drawnByWeight([0, 0], 0.3)).toBe(-1);
  });
});

describe('a lamp carried past a post', () => {
  const numbers = { u: 0.5, v: 0.5, time: 0.5 };
  it('moments taken together, one shadow ray, give the mean of rays at all moments (1 %)', () => {
    const steps = 4000;
    let exact = 0;
    let open = 0;
    for (let i = 0; i < steps; i++) {
      const time = (i + 0.5) / steps;
      exact += irradianceSample(stage, walked, receiver, { ...numbers, time }) / steps;
      open += irradianceSample(bare, walked, receiver, { ...numbers, time }) / steps;
    }
    // the post takes a good part of the light, so that the draw matters
    expect(exact / open).toBeGreaterThan(0.3);
    expect(exact / open).toBeLessThan(0.8);
    const random = seededRandom(9);
    const samples = 16_000;
    let sum = 0;
    for (let s = 0; s < samples; s++)
      sum += irradianceSample(stage, walked, receiver, {
        ...numbers,
        taken: { ...momentsTaken(stage, walked, s % 64), choice: random() },
      });
    expect(Math.abs(sum / samples / exact - 1)).toBeLessThanOrEqual(0.01);
  });

  it('without shadows sixteen samples are as good as all moments (0.01 %)', () => {
    let [exact, sum] = [0, 0];
    for (let i = 0; i < 4000; i++)
      exact += irradianceSample(bare, walked, receiver, { ...numbers, time: (i + 0.5) / 4000 }) / 4000;
    for (let s = 0; s < 16; s++)
      sum += irradianceSample(bare, walked, receiver, {
        ...numbers,
        taken: { ...momentsTaken(bare, walked, s), choice: 0.5 },
      });
    expect(Math.abs(sum / 16 / exact - 1)).toBeLessThanOrEqual(1e-4);
  });
});
