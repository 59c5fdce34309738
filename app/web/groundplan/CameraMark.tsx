import type { Camera } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { moveCamera } from '../state/edits/place-edits.ts';
import { PlanMark } from './PlanMark.tsx';
import { type PlanView, planHalf, toPlan } from './plan-view.ts';

/** The camera, and the picture's left and right edges as two lines over the ground. */
export const CameraMark = ({
  view,
  camera,
  schemeId,
  isSelected,
}: {
  view: PlanView;
  camera: Camera;
  schemeId: string;
  isSelected: boolean;
}) => {
  const { edit, select } = useApp.getState();
  const [x, y] = toPlan(view, camera.position);
  const [ax, ay] = toPlan(view, camera.aim);
  const turn = Math.atan2(ay - y, ax - x);
  const roll = Math.abs(Math.sin((camera.rollDegrees * Math.PI) / 180)) > 0.7;
  const half = Math.atan((roll ? camera.sensor.heightMm : camera.sensor.widthMm) / 2 / camera.focalLengthMm);
  const reach = planHalf * 3;
  const edge = (side: 1 | -1) =>
    [x + reach * Math.cos(turn + side * half), y + reach * Math.sin(turn + side * half)] as const;
  const [left, right] = [edge(-1), edge(1)];
  const degrees = (turn * 180) / Math.PI + 90;
  return (
    <>
      <path d={`M${left[0]} ${left[1]}L${x} ${y}L${right[0]} ${right[1]}`} className="frame-edges" aria-hidden="true" />
      <PlanMark
        view={view}
        position={camera.position}
        aim={camera.aim}
        label="Camera. Arrow keys move it, Page Up and Page Down lift it."
        isSelected={isSelected}
        onSelect={() => select({ kind: 'camera' })}
        onMove={(to, run) => edit((setup) => moveCamera(setup, schemeId, to), run)}
      >
        <path d="M-9 -4H-5L-3 -9H3L5 -4H9V7H-9Z" transform={`rotate(${degrees})`} className="camera-body" />
      </PlanMark>
    </>
  );
};
