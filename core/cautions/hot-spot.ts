import { stopsFromMidGrey } from '../camera/exposure.ts';
import { nearToFar } from '../readings/near-to-far.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** The end of the subject that is nearest to the lamp comes out bright, and far brighter than its middle. */
export const hotSpot: PassRule = ({ world, worldFrame, pass, light, reading }) => {
  const { overMiddle, overMidGrey } = limits.hotSpotStops;
  const along = nearToFar(world, light, reading.rim.subjectId);
  if (!along || along.nearOverMiddleStops <= overMiddle) return null;
  const stops = stopsFromMidGrey(along.nearLuminanceSeconds, worldFrame.exposure);
  if (stops <= overMidGrey) return null;
  const value = along.nearOverMiddleStops;
  return {
    code: 'hot-spot',
    severity: 'note',
    passId: pass.id,
    message: `${pass.name}: the near end of “${along.subjectName}” gets ${value.toFixed(1)} stops more light than its middle and comes out ${stops.toFixed(1)} over mid-grey. Stand farther off, aim at the far end, or sweep and keep the beam off the near end.`,
    value,
    limit: overMiddle,
  };
};
