import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** Level from which on something is told from the night round it; dark before dark shows nobody. */
const showsFrom = limits.tooDarkStops;

const levelText = (stops: number): string => `${Math.abs(stops).toFixed(1)} ${stops < 0 ? 'under' : 'over'} mid-grey`;

/** Whoever holds the lamp stands in the picture long enough to show, lit or before something lit. */
export const personInFrame: PassRule = ({ world, pass, reading: { person } }) => {
  if (!person || person.stillShare <= limits.personShare) return null;
  const { bodyStops, backgroundStops, stillShare, visibleSeconds, hidesId } = person;
  const [own, behind] = [bodyStops ?? Number.NEGATIVE_INFINITY, backgroundStops ?? Number.NEGATIVE_INFINITY];
  if (Math.max(own, behind) < showsFrom) return null;
  const light =
    own > behind ? `light falls on you, ${levelText(own)}` : `what is behind you is lit, ${levelText(behind)}`;
  const hidden = world.stage.subjects.find(({ id }) => id === hidesId)?.name;
  const hides = hidden ? `You stand between the lens and “${hidden}” and hide part of it. ` : '';
  return {
    code: 'person-in-frame',
    severity: 'warning',
    passId: pass.id,
    message: `${pass.name}: ${hides}${hides ? 'The' : 'the'} lens sees you for ${visibleSeconds.toFixed(visibleSeconds < 10 ? 1 : 0)} s, at one place for ${Math.round(100 * stillShare)} % of the exposure, and ${light}. Past about ${100 * limits.personShare} % a ghost shows. Crouch behind something, step out of the frame, keep moving, or put the lamp on a stand.`,
    value: stillShare,
    limit: limits.personShare,
  };
};
