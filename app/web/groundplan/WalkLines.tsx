import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { WalkLine } from '../../../core/readings/walk-lines.ts';
import { useApp, useScheme } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { placeWords, wayWordsY } from '../ui/lamp-words-at.ts';
import { openPath } from '../ui/open-path.ts';
import { type PlanView, planHalf, toPlan } from '../ui/plan-view.ts';
import { belongsTo, drawnWalks, walkWords } from '../ui/walk-words.ts';

/** Half-way along a line, by its length. */
const halfWay = (places: readonly GroundPoint[]): GroundPoint => {
  const steps = places.slice(1).map((to, i) => {
    const from = places[i] as GroundPoint;
    return { from, to, length: Math.hypot(to[0] - from[0], to[1] - from[1]) };
  });
  let left = steps.reduce((sum, { length }) => sum + length, 0) / 2;
  for (const { from, to, length } of steps) {
    if (left <= length && length > 0) {
      const t = left / length;
      return [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
    }
    left -= length;
  }
  return places[0] as GroundPoint;
};

const keyOf = ({ from, to }: WalkLine): string =>
  [from, to].map((end) => (end ? `${end.frameId}/${end.passId}` : 'camera')).join(' to ');

/** The ways on foot between the passes, from the camera and back: thin and dashed, with metres and seconds of the selected pass. */
export const WalkLines = ({ view }: { view: PlanView }) => {
  const walks = useReport()?.walks ?? [];
  const selection = useApp((state) => state.selection);
  const { frames } = useScheme();
  const passOf = (frameId: string, passId: string) =>
    frames.find(({ id }) => id === frameId)?.passes.find(({ id }) => id === passId);
  const keep = (v: number) => Math.min(Math.max(v, 60 - planHalf), planHalf - 60);
  return (
    <g aria-hidden="true">
      {drawnWalks(walks).map((walk) => {
        const isOwn = selection?.kind === 'pass' && belongsTo(walk, selection.frameId, selection.passId);
        const places = walk.points.map((point) => toPlan(view, point));
        const [x, y] = halfWay(places);
        const lamp = isOwn && walk.to && passOf(walk.to.frameId, walk.to.passId)?.waypoints[0]?.position;
        const words = walkWords(walk);
        return (
          <g key={keyOf(walk)} className={isOwn ? 'walk-line walk-line-own' : 'walk-line'}>
            <path d={openPath(places)} />
            {lamp && (
              <text
                x={keep(x)}
                y={wayWordsY([keep(x), y], words, toPlan(view, lamp), placeWords)}
                className="mark-text hour"
              >
                {words}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
};
