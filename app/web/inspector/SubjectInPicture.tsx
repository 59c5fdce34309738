import { useState } from 'react';
import { type CameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { StageSubject } from '../../../core/world/stage.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { cameraThatShows } from '../state/edits/camera-placing.ts';
import { cameraOf, changeCamera } from '../state/edits/place-edits.ts';
import { Choice } from '../ui/Choice.tsx';

/** Lowest, highest and middle of a subject, world axes. */
const boxOf = ({ points }: StageSubject): { readonly low: Vec3; readonly high: Vec3; readonly middle: Vec3 } => {
  const [low, high] = [
    [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY],
    [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY],
  ] as [number[], number[]];
  points.forEach((v, i) => {
    low[i % 3] = Math.min(low[i % 3] as number, v);
    high[i % 3] = Math.max(high[i % 3] as number, v);
  });
  const middle = low.map((v, axis) => (v + (high[axis] as number)) / 2);
  return { low, high, middle } as unknown as { low: Vec3; high: Vec3; middle: Vec3 };
};

/** The subject whose middle is nearest to the middle of the picture. */
const nearestToMiddle = (view: CameraView, subjects: readonly StageSubject[]): StageSubject | undefined => {
  const off = (subject: StageSubject) => {
    const at = projectPoint(view, boxOf(subject).middle);
    return at ? Math.hypot(at[0] - 0.5, at[1] - 0.5) : Number.POSITIVE_INFINITY;
  };
  return [...subjects].sort((a, b) => off(a) - off(b))[0];
};

const columns = [
  ['left third', 1 / 3],
  ['middle', 1 / 2],
  ['right third', 2 / 3],
] as const;
const rows = [
  ['upper third', 1 / 3],
  ['middle', 1 / 2],
  ['lower third', 2 / 3],
] as const;

/** Turns the camera so that a subject's middle comes to a third, and says how much of it stands over the horizon. */
export const SubjectInPicture = ({ schemeId }: { schemeId: string }) => {
  const setup = useSetup();
  const scheme = useScheme();
  const { edit, tell } = useApp.getState();
  const [chosenId, setChosenId] = useState<string | null>(null);
  const { stage, view } = buildWorld(setup, scheme);
  const subject = stage.subjects.find(({ id }) => id === chosenId) ?? nearestToMiddle(view, stage.subjects);
  if (!subject) return null;
  const { low, high, middle } = boxOf(subject);
  const over = Math.min(Math.max((high[1] - view.position[1]) / Math.max(high[1] - low[1], 1e-6), 0), 1);
  const put = (x: number, y: number) => {
    const camera = cameraThatShows(cameraOf(setup, schemeId), middle, x, y);
    if (camera) edit((s) => changeCamera(s, schemeId, () => camera));
    else
      tell({
        tone: 'problem',
        text: `${subject.name} can’t come there: the camera would have to look straight up or down.`,
      });
  };
  return (
    <div className="placing-thirds">
      <Choice
        label="Put the middle of"
        value={subject.id}
        options={stage.subjects.map(({ id, name }) => [id, name] as const)}
        onChange={setChosenId}
      />
      <div className="thirds" role="group" aria-label={`Where ${subject.name} stands in the picture`}>
        {rows.flatMap(([row, y]) =>
          columns.map(([column, x]) => (
            <button
              key={`${row} ${column}`}
              type="button"
              aria-label={`${column}, ${row}`}
              title={`${column}, ${row}`}
              onClick={() => put(x, y)}
            />
          )),
        )}
      </div>
      <p className="quiet">
        Lens at {view.position[1].toFixed(2)} m: {Math.round(over * 100)} % of its height stands over the horizon
      </p>
    </div>
  );
};
