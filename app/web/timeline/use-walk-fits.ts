import type { Frame, Pass } from '../../../core/setup/schema/setup.ts';
import { useSetup } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import type { Turn } from './turns.ts';
import { type WalkFit, walkFit } from './walk-fit.ts';

/** Asks for the walk to a pass of the present scheme, as far as it has been worked out. */
export const useWalkFits = (turns: readonly Turn[]): ((frame: Frame, pass: Pass) => WalkFit | null) => {
  const { metresPerSecond } = useSetup().walking;
  const report = useReport();
  return (frame, pass) => {
    const before = turns.find((turn) => turn.frame === frame)?.before.get(pass.id);
    const readings = report?.frames.find(({ id }) => id === frame.id)?.passes;
    const timing = readings?.find(({ passId }) => passId === pass.id)?.timing;
    return walkFit(pass, before, timing, metresPerSecond);
  };
};
