import type { PictureName, Shape } from './shapes.ts';
import type { Block } from './text-lines.ts';
import { capMm, type } from './type.ts';

const gap = 4;
const captionMm = 5.6;
const captions: Readonly<Record<PictureName, string>> = { lit: 'As planned', unlit: 'Without lamps' };

/** The picture as planned and the unlit one, side by side, each in a hairline with a word under it. */
export const previewsBlock = (x: number, top: number, width: number, aspect: number): Block => {
  const height = width / aspect;
  const one = (name: PictureName, left: number): Shape[] => [
    { kind: 'picture', name, x: left, y: top, width, height },
    {
      kind: 'path',
      path: `M${left} ${top}L${left + width} ${top}L${left + width} ${top + height}L${left} ${top + height}Z`,
      width: 0.18,
      fill: 'none',
    },
    {
      kind: 'text',
      text: captions[name],
      style: type.body,
      anchor: 'start',
      x: left,
      y: top + height + capMm(type.body) + 1.6,
    },
  ];
  return { shapes: [...one('lit', x), ...one('unlit', x + width + gap)], bottom: top + height + captionMm };
};
