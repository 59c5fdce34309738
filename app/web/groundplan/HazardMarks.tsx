import { useApp, useSetup } from '../state/app-store.ts';
import type { PlanView } from '../ui/plan-view.ts';
import { HazardMark } from './HazardMark.tsx';

/** All hazards, the widest at the back. */
export const HazardMarks = ({ view }: { view: PlanView }) => {
  const { hazards } = useSetup();
  const selection = useApp((state) => state.selection);
  const chosen = selection?.kind === 'hazard' ? selection.hazardId : null;
  return [...hazards]
    .sort((a, b) => b.radiusMetres - a.radiusMetres)
    .map((hazard) => <HazardMark key={hazard.id} view={view} hazard={hazard} isSelected={hazard.id === chosen} />);
};
