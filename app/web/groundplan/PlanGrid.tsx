import { pathOf } from '../ui/plan-paths.ts';
import { type PlanView, planHalf, ringStep, ringWords, toPlan } from '../ui/plan-view.ts';

/** Where the numerals of the clock stand. */
const clockRadius = planHalf * 0.93;
/** A ring's distance stands at the line straight ahead, and beside the twelve where it would lie on it. */
const besideTwelve = (ringRadius: number): number => (Math.abs(ringRadius - clockRadius) < 26 ? 13 : 3);

const hours = [12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11];

/** Distance rings, the clock, scale bar and north: what does not move. */
export const PlanGrid = ({ view, northDegrees }: { view: PlanView; northDegrees: number }) => {
  const step = ringStep(view);
  const count = Math.floor((planHalf * 0.94) / (step * view.unitsPerMetre));
  const north = (northDegrees * Math.PI) / 180;
  // true north is that far anticlockwise of the scene's own north axis
  const [nx, ny] = toPlan({ ...view, centre: [0, 0], unitsPerMetre: 15 }, [-Math.sin(north), Math.cos(north)]);
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
      {hours.map((hour) => {
        const turn = (hour * Math.PI) / 6;
        const [x, y] = [Math.sin(turn), -Math.cos(turn)];
        const r = clockRadius;
        return (
          <text key={hour} x={x * r} y={y * r + 4} className="hour">
            {hour}
          </text>
        );
      })}
      <g transform={`translate(${planHalf - 36} ${44 - planHalf})`} className="north">
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
      <g transform={`translate(${14 - planHalf} ${planHalf - 14})`} className="scale-bar">
        <path d={`M0 -5V0H${step * view.unitsPerMetre}V-5`} />
        <text x={step * view.unitsPerMetre + 5} y={1}>
          {ringWords(step)}
        </text>
      </g>
    </g>
  );
};
