import { radiansFromDegrees } from '../../units/angle.ts';
import { footMetres } from '../../units/feet.ts';
import type { FieldCard } from '../field-card.ts';
import type { Shape } from '../sheet/shapes.ts';
import { type } from '../sheet/type.ts';
import type { PlanFrame } from './plan-frame.ts';
import { arrowHead, stroke } from './strokes.ts';

const roundLengths = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];
/** Longest scale bar, millimetres. */
const longestBar = 34;

/** A bar of a round length with its ticks, and the scale in words, at the plan's lower left corner. */
export const scaleShapes = ({ box, scale }: PlanFrame, lengths: FieldCard['lengths']): Shape[] => {
  const unitMm = ((lengths === 'feet' ? footMetres : 1) * 1000) / scale;
  // a metre takes 20 mm at the largest scale
  const units = roundLengths.findLast((each) => each * unitMm <= longestBar) as number;
  const [x, y, long] = [box.x + 2.5, box.y + box.height - 2.5, units * unitMm];
  const tick = (at: number): Shape => ({ kind: 'line', x1: at, y1: y - 1.6, x2: at, y2: y, width: stroke });
  return [
    { kind: 'line', name: 'scale-bar', x1: x, y1: y, x2: x + long, y2: y, width: stroke },
    tick(x),
    tick(x + long),
    {
      kind: 'text',
      text: `${units} ${lengths === 'feet' ? 'ft' : 'm'}, 1 : ${scale}`,
      style: type.body,
      anchor: 'start',
      x,
      y: y - 2.6,
      hasRim: true,
    },
  ];
};

/** An arrow to true north at the plan's upper right corner. */
export const northShapes = ({ box, way }: PlanFrame, northDegrees: number): Shape[] => {
  const turn = radiansFromDegrees(-northDegrees);
  const [dx, dy] = way([Math.sin(turn), Math.cos(turn)]);
  const length = Math.hypot(dx, dy);
  const [ux, uy] = [dx / length, dy / length];
  const [x, y] = [box.x + box.width - 9, box.y + 9.5];
  const [tipX, tipY] = [x + 7 * ux, y + 7 * uy];
  return [
    { kind: 'circle', x, y, radius: 7.8, width: 0, fill: 'white' },
    { kind: 'line', name: 'north', x1: x - 7 * ux, y1: y - 7 * uy, x2: tipX, y2: tipY, width: stroke },
    arrowHead([tipX, tipY], [ux, uy]),
    { kind: 'text', text: 'N', style: type.strong, anchor: 'middle', x, y: y + 1.3, hasRim: true },
  ];
};
