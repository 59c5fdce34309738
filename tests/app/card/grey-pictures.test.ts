import { decode } from 'fast-png';
import { describe, expect, it } from 'vitest';
import { greyPictures } from '../../../app/card/grey-pictures.ts';

const flat = (r: number, g: number, b: number, alpha?: number) => ({
  width: 4,
  height: 2,
  data: Array.from({ length: 8 }, () => (alpha === undefined ? [r, g, b] : [r, g, b, alpha])).flat(),
});

describe('greyPictures', () => {
  it('gives one channel of the size, weighted as eyes see (Rec. 709), with or without alpha', () => {
    const { lit } = greyPictures(flat(240, 240, 240), flat(0, 0, 0));
    expect(decode(lit)).toMatchObject({ width: 4, height: 2, channels: 1, depth: 8 });
    const { unlit } = greyPictures(flat(240, 240, 240), flat(100, 50, 200, 255));
    // 0.2126 x 100 + 0.7152 x 50 + 0.0722 x 200 = 71.46
    expect([...decode(unlit).data]).toEqual(Array(8).fill(71));
  });

  it('lifts both alike, so far that the lit one is light, and never over two and a half times', () => {
    const { lit, unlit } = greyPictures(flat(117.5, 117.5, 117.5), flat(20, 20, 20));
    expect(decode(lit).data[0]).toBe(235);
    expect(decode(unlit).data[0]).toBe(40);
    expect(decode(greyPictures(flat(10, 10, 10), flat(4, 4, 4)).lit).data[0]).toBe(25);
  });
});
