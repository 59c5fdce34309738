import { Slips } from './inspector/Slips.tsx';
import { Subjects } from './inspector/subjects/Subjects.tsx';
import { PlaceSlip } from './place/PlaceSlip.tsx';

/** All strips: lamps, camera, ground, place and subjects. */
export const BelowPlan = () => (
  <>
    <Slips />
    <PlaceSlip />
    <Subjects />
  </>
);
