import { lastSetFrame, leavesCameraAt } from '../../../core/readings/set-off.ts';
import type { Frame, Pass } from '../../../core/setup/schema/setup.ts';
import { useSetup } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import type { Turn } from './turns.ts';
import { cameraFit, type WalkFit, walkFit } from './walk-fit.ts';

/** Asks for the walk to a pass of the present scheme, as far as it has been worked out. */
export const useWalkFits = (turns: readonly Turn[]): ((frame: Frame, pass: Pass) => WalkFit | null) => {
  const { metresPerSecond } = useSetup().walking;
  const report = useReport();
  const scheme = { frames: turns.map(({ frame }) => frame) };
  return (frame, pass) => {
    const turn = turns.find((each) => each.frame === frame);
    const before = turn?.before.get(pass.id);
    const out = report?.walks.find(({ from, to }) => !from && to?.frameId === frame.id && to.passId === pass.id);
    if (turn && out)
      return cameraFit(pass, out, turn.order.startSeconds, leavesCameraAt(scheme, frame), {
        delaySeconds: lastSetFrame(scheme, frame).delaySeconds,
        isFirst: lastSetFrame(scheme, frame) === scheme.frames[0],
      });
    const readings = report?.frames.find(({ id }) => id === frame.id)?.passes;
    const timing = readings?.find(({ passId }) => passId === pass.id)?.timing;
    return walkFit(pass, before, timing, metresPerSecond);
  };
};
