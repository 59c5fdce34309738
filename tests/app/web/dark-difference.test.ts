// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { slowImage } from '../../../app/web/render/slow-image.ts';
import { channelsOf, differenceBands } from '../../../app/web/render/stops-bands.ts';

/** Mid-greys of two pictures, and the band of their difference; that of a darker one is hatched at each fourth pixel. */
const pairs = [
  [0.0019, 0.00002, 0],
  [0, 0.0015, 0],
  [0.0001, 0.016, -3],
  [0.008, 0, 2],
  [0.5, 0.25, 1],
] as const;

describe('the difference that the processor draws', () => {
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });

  it('is plain where both are dark, as on the graphics card (stops-map.test.ts)', () => {
    const drawn: number[] = [];
    const putImageData = ({ data }: ImageData) => drawn.push(...data);
    vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue({ putImageData } as never);
    vi.stubGlobal('ImageData', function image(this: { data: Uint8ClampedArray }, data: Uint8ClampedArray) {
      this.data = data;
    });
    const greys = (values: readonly number[]) => Float32Array.from(values.flatMap((v) => [v, v, v]));
    const [linear, against] = [greys(pairs.map(([a]) => a)), greys(pairs.map(([, b]) => b))];
    slowImage({ name: 'map', width: pairs.length, height: 1, bytes: null, linear, against });
    for (const [p, [, , band]] of pairs.entries()) {
      const colour = channelsOf(differenceBands.colours[band - differenceBands.first] as string);
      expect(drawn.slice(4 * p, 4 * p + 3)).toEqual(colour.map((v) => Math.round(255 * v)));
    }
  });
});
