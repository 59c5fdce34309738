import type { Camera } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { moveCamera } from '../state/edits/place-edits.ts';
import { cameraOutline, cameraTurn, frameEdgesPath, pathOf } from '../ui/plan-paths.ts';
import type { PlanView } from '../ui/plan-view.ts';
import { PlanMark } from './PlanMark.tsx';

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
  const degrees = (cameraTurn(view, camera) * 180) / Math.PI + 90;
  return (
    <>
      <path d={frameEdgesPath(view, camera)} className="frame-edges" aria-hidden="true" />
      <PlanMark
        view={view}
        position={camera.position}
        aim={camera.aim}
        label="Camera. Arrow keys move it, Page Up and Page Down lift it."
        isSelected={isSelected}
        onSelect={() => select({ kind: 'camera' })}
        onMove={(to, run) => edit((setup) => moveCamera(setup, schemeId, to), run)}
      >
        <path d={pathOf(cameraOutline)} transform={`rotate(${degrees})`} className="camera-body" />
      </PlanMark>
    </>
  );
};
