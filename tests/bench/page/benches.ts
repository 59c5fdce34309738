import type { WebGLRenderer } from 'three';
import wallText from '../../../assets/setups/drystone-wall.json?raw';
import chapelText from '../../../assets/setups/roofless-chapel.json?raw';
import stonesText from '../../../assets/setups/three-stones.json?raw';
import { benchConvergence } from './converge.ts';
import { benchCurves } from './curves.ts';
import { benchGrowth } from './growth.ts';
import { lampKinds, rayCases } from './lit-pebbles.ts';
import { benchMovedSubject } from './moved-subject.ts';
import { benchMovingPass } from './moving-pass.ts';
import { OtherTracer } from './other-tracer.ts';
import { benchRays } from './rays.ts';
import { benchReadings } from './readings.ts';
import { benchRemix } from './remix.ts';
import { benchSweep } from './sweep.ts';
import { numberIn, numbersIn, sizeIn } from './timing.ts';

/**
 * A bench of this page: gives results one by one, each as soon as it is there. Sizes that the address leaves out suit a
 * graphics card.
 */
export type Bench = (gl: WebGLRenderer, query: URLSearchParams) => Iterable<object> | AsyncIterable<object>;

const [few, some, many] = [3000, 30_000, 300_000];

export const benches: Readonly<Record<string, Bench>> = {
  *rays(gl, query) {
    const size = sizeIn(query);
    const [rounds, batch] = [numberIn(query, 'rounds', 5), numberIn(query, 'batch', 4)];
    for (const kind of query.get('cases')?.split(',') ?? rayCases) {
      const isCheapest = kind === 'torch';
      for (const triangles of numbersIn(query, 'triangles', isCheapest ? [few, some, many] : [some]))
        for (const passes of numbersIn(query, 'passes', isCheapest ? [1, 6, 16] : [6]))
          yield { ...size, ...benchRays(gl, kind as 'torch', triangles, passes, size, rounds, batch) };
    }
  },
  async *converge(gl, query) {
    const size = sizeIn(query);
    const [triangles, seconds] = [numberIn(query, 'triangles', some), numberIn(query, 'budget', 40)];
    const other = new OtherTracer(gl);
    for (const kind of query.get('kinds')?.split(',') ?? lampKinds)
      for (const lamps of numbersIn(query, 'lamps', [1, 6]))
        yield { ...size, ...(await benchConvergence(gl, other, triangles, kind as 'torch', lamps, size, seconds)) };
  },
  *remix(gl, query) {
    const size = sizeIn(query);
    yield { ...size, ...benchRemix(gl, numberIn(query, 'triangles', some), 6, size, numberIn(query, 'rounds', 9)) };
  },
  *curves(gl, query) {
    const size = sizeIn(query);
    for (const curve of benchCurves(gl, size, numberIn(query, 'rounds', 5))) yield { ...size, ...curve };
  },
  *growth(gl, query) {
    const size = sizeIn(query);
    for (const growth of ['finer', 'closer'] as const) {
      const samples = benchGrowth(gl, growth, [few, some, many], size, numberIn(query, 'rounds', 7));
      yield { ...size, growth, samples };
    }
  },
  *'moved-subject'(gl, query) {
    yield benchMovedSubject(gl, some, sizeIn(query), numberIn(query, 'frames', 120));
  },
  *'moving-pass'(gl, query) {
    const size = sizeIn(query, 320, 180);
    yield { ...size, found: benchMovingPass(gl, wallText, 'b-two-metres-out', size) };
  },
  *sweep(gl) {
    yield benchSweep(gl, stonesText, { schemeId: 'side', frameId: 'painted', passId: 'key' });
  },
  async *readings(_gl, query) {
    for (const text of [stonesText, wallText, chapelText])
      yield await benchReadings(text, numberIn(query, 'rounds', 5));
  },
};
