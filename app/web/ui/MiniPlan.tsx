import { useMemo } from 'react';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { planSentence } from './plan-lamps.ts';
import type { PlanShape } from './plan-pen.ts';
import { type PlanOptions, planShapes } from './plan-shapes.ts';
import { planHalf } from './plan-view.ts';

const viewBox = `${-planHalf} ${-planHalf} ${2 * planHalf} ${2 * planHalf}`;

const ShapeOf = ({ shape }: { shape: PlanShape }) =>
  'text' in shape ? (
    <text
      x={shape.x}
      y={shape.y}
      fontSize={shape.size}
      fontWeight={shape.isStrong ? 650 : 400}
      textAnchor={shape.anchor}
      fill={shape.colour}
    >
      {shape.text}
    </text>
  ) : (
    <path
      d={shape.path}
      fill={shape.fill ?? 'none'}
      stroke={shape.stroke ?? 'none'}
      strokeWidth={shape.width}
      strokeDasharray={shape.dash.join(' ') || undefined}
      opacity={shape.opacity}
    />
  );

/** A small ground plan of one scheme, to look at. As wide as the box that it is put in; `sizePixels` says about how wide. */
export const MiniPlan = ({
  setup,
  scheme,
  view,
  colouring = 'dark',
  sizePixels = 160,
}: { setup: Setup; scheme: Scheme } & PlanOptions) => {
  const shapes = useMemo(
    () => planShapes(setup, scheme, { view, colouring, sizePixels }),
    [setup, scheme, view, colouring, sizePixels],
  );
  return (
    <svg className="mini-plan" viewBox={viewBox} role="img" aria-label={planSentence(setup, scheme)}>
      {shapes.map((shape, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a drawing without a life of its own, drawn anew as a whole
        <ShapeOf key={i} shape={shape} />
      ))}
    </svg>
  );
};
