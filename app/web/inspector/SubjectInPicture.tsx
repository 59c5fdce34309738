import { useState } from 'react';
import { buildWorld } from '../../../core/world/world.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { cameraThatShows } from '../state/edits/camera-placing.ts';
import { cameraOf, changeCamera } from '../state/edits/place-edits.ts';
import { Choice } from '../ui/Choice.tsx';
import { lengthWords } from '../ui/lengths.ts';
import { boxOfPoints } from './box-of-points.ts';
import { nearestToMiddle } from './nearest-to-middle.ts';

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
  const { low, high, middle } = boxOfPoints(subject.points);
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
        Lens at {lengthWords(view.position[1], 2)}: {Math.round(over * 100)} % of its height stands over the horizon
      </p>
    </div>
  );
};
