import { type ReactNode, useState } from 'react';
import { NumberField } from '../../ui/NumberField.tsx';
import { Fold } from './Fold.tsx';
import { PointsDrawing } from './PointsDrawing.tsx';
import { type DocumentPoint, pointAfter } from './points.ts';

interface PointsEditorProps {
  readonly points: readonly DocumentPoint[];
  readonly isClosed: boolean;
  /** Names of the two numbers of a point: "East", "North". */
  readonly axes: readonly [string, string];
  /** Least that the first of them may be. */
  readonly leastAcross: number;
  readonly fewest: number;
  readonly most: number;
  readonly isTurned?: boolean;
  readonly onChange: (points: DocumentPoint[], run?: string) => void;
  readonly onInsert: (index: number, point: DocumentPoint) => void;
  readonly onRemove: (index: number) => void;
  /** Why the last change was refused. */
  readonly children?: ReactNode;
}

/** An outline as a drawing whose points can be dragged, and as numbers. */
export const PointsEditor = (props: PointsEditorProps) => {
  const { points, isClosed, axes, leastAcross, fewest, most, isTurned = false, onChange, onInsert, onRemove } = props;
  const [chosen, setChosen] = useState(0);
  const selected = Math.min(chosen, points.length - 1);
  const put = (index: number, to: DocumentPoint, run?: string) =>
    onChange((points as DocumentPoint[]).with(index, [Math.max(to[0], leastAcross), to[1]]), run);
  const pair = (index: number, isNumbered: boolean) => {
    const [across, up] = points[index] as DocumentPoint;
    const field = (axis: 0 | 1) => (
      <NumberField
        label={isNumbered ? `${axes[axis]} ${index + 1}` : axes[axis]}
        unit="m"
        value={axis === 0 ? across : up}
        min={axis === 0 ? leastAcross : -2000}
        max={2000}
        step={0.05}
        digits={3}
        onChange={(value) => put(index, axis === 0 ? [value, up] : [across, value])}
      />
    );
    return (
      <>
        {field(0)}
        {field(1)}
      </>
    );
  };
  return (
    <div className="points">
      <div className="points-row">
        <PointsDrawing
          points={points}
          isClosed={isClosed}
          axes={axes}
          selected={selected}
          onSelect={setChosen}
          onMove={put}
          isTurned={isTurned}
        />
        <div className="points-one" role="group" aria-label={`Point ${selected + 1} of ${points.length}`}>
          <span className="quiet">
            Point {selected + 1} of {points.length}
          </span>
          <div className="point-pair">{pair(selected, false)}</div>
          <div className="actions">
            <button
              type="button"
              disabled={points.length >= most}
              title="Between this point and the next"
              onClick={() => {
                onInsert(selected + 1, pointAfter(points, selected, isClosed));
                setChosen(selected + 1);
              }}
            >
              Add a point
            </button>
            <button
              type="button"
              disabled={points.length <= fewest}
              onClick={() => {
                onRemove(selected);
                setChosen(Math.max(selected - 1, 0));
              }}
            >
              Remove
            </button>
          </div>
        </div>
      </div>
      {props.children}
      <Fold title={`Type all ${points.length} points`}>
        <ol className="points-list">
          {points.map((_, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: points have no names of their own
            <li key={index}>{pair(index, true)}</li>
          ))}
        </ol>
      </Fold>
    </div>
  );
};
