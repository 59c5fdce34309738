import { beamEscape } from '../readings/beam-escape.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** What holds for every beam that goes up. */
const aircraft = 'Keep it off aircraft; local law decides.';

/** The beam goes past everything into the sky: aimed there, or so strong that what goes past reaches aircraft. */
export const beamAtSky: PassRule = ({ world, pass, light, reading }) => {
  const { axisEscapes, share } = beamEscape(world.stage, light);
  const say = (severity: 'note' | 'warning', message: string, value: number, limit: number) => ({
    code: 'beam-at-sky',
    severity,
    passId: pass.id,
    message: `${pass.name}: ${message} ${aircraft}`,
    value,
    limit,
  });
  if (!reading.target && axisEscapes)
    return say(
      'warning',
      'aimed past everything, into the sky: the camera sees nothing there for it to light. Aim it again.',
      share ?? 1,
      0,
    );
  const { peakCandela } = reading.beam;
  if (share === null || share <= limits.skyShare || peakCandela <= limits.skyCandela) return null;
  return say(
    'note',
    `${Math.round(100 * share)} % of its beam, ${Number(peakCandela.toPrecision(2))} cd, goes past everything into the sky. Aim lower, or put a snoot on it.`,
    share,
    limits.skyShare,
  );
};
