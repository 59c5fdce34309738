import { clockNumerals, clockRadius, northAt, northOnPlan, scaleBarAt } from '../ui/plan-dial.ts';
import { pathOf } from '../ui/plan-paths.ts';
import { type PlanView, planHalf, ringStep, ringWords } from '../ui/plan-view.ts';

/** A ring's distance stands at the line straight ahead, and beside the twelve where it would lie on it. */
const besideTwelve = (ringRadius: number): number => (Math.abs(ringRadius - clockRadius) < 26 ? 13 : 3);

/** Distance rings, the clock, scale bar and north: what does not move. */
export const PlanGrid = ({ view, northDegrees }: { view: PlanView; northDegrees: number }) => {
  const step = ringStep(view);
  const count = Math.floor((planHalf * 0.94) / (step * view.unitsPerMetre));
  const [nx, ny] = northOnPlan(view, northDegrees);
  return (
    <g className="plan-grid" aria-hidden="true">
      {Array.from({ length: count }, (_, i) => (i + 1) * step).map((metres) => (
        <g key={metres}>
          <circle r={metres * view.unitsPerMetre} className="ring" />
          <text x={besideTwelve(metres * view.unitsPerMetre)} y={-metres * view.unitsPerMetre - 3}>
            {ringWords(metres)}
          </text>
        </g>
      ))}
      {clockNumerals.map(({ hour, at: [x, y] }) => (
        <text key={hour} x={x} y={y + 4} className="hour">
          {hour}
        </text>
      ))}
      <g transform={`translate(${northAt.join(' ')})`} className="north">
        <line x1={-nx} y1={-ny} x2={nx} y2={ny} />
        <path
          d={pathOf([
            [nx * 1.35, ny * 1.35],
            [nx * 0.55 - ny * 0.28, ny * 0.55 + nx * 0.28],
            [nx * 0.55 + ny * 0.28, ny * 0.55 - nx * 0.28],
          ])}
        />
        <text x={nx * 1.9} y={ny * 1.9 + 4} className="hour">
          N
        </text>
      </g>
      <g transform={`translate(${scaleBarAt.join(' ')})`} className="scale-bar">
        <path d={`M0 -5V0H${step * view.unitsPerMetre}V-5`} />
        <text x={step * view.unitsPerMetre + 5} y={1}>
          {ringWords(step)}
        </text>
      </g>
    </g>
  );
};
