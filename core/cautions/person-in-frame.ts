import { exactSeconds } from '../units/third-stops.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** Level from which on something is told from the night round it; dark before dark shows nobody. */
const showsFrom = limits.tooDarkStops;

const levelText = (stops: number): string =>
  `${Math.abs(stops).toFixed(1)} stops ${stops < 0 ? 'under' : 'over'} mid-grey`;

const secondsText = (seconds: number): string => `${seconds.toFixed(seconds < 10 ? 1 : 0)} s`;

const partWords = (share: number): string => (share > 0.9 ? 'it' : share > 0.5 ? 'most of it' : 'part of it');

/** Whoever holds the lamp stands in the picture long enough to show, lit or before something lit. */
export const personInFrame: PassRule = ({ world, frame, pass, reading: { person } }) => {
  if (!person || person.stillShare <= limits.personShare) return null;
  const { bodyStops, backgroundStops, stillShare, visibleSeconds, atLensSeconds, hidesId, hiddenShare } = person;
  const told = { code: 'person-in-frame', passId: pass.id, value: stillShare, limit: limits.personShare } as const;
  const atLensShare = atLensSeconds / exactSeconds(frame.seconds);
  if (atLensShare > limits.personShare)
    return {
      ...told,
      severity: 'danger',
      message: `${pass.name}: you stand right before the lens and hide the picture for ${secondsText(atLensSeconds)}, ${Math.round(100 * atLensShare)} % of the exposure. Hold the lamp from beside the camera or from behind it, or put it on a stand.`,
    };
  const [own, behind] = [bodyStops ?? Number.NEGATIVE_INFINITY, backgroundStops ?? Number.NEGATIVE_INFINITY];
  if (Math.max(own, behind) < showsFrom) return null;
  const light =
    own > behind ? `light falls on you, ${levelText(own)}` : `what is behind you is lit, ${levelText(behind)}`;
  const hidden = world.stage.subjects.find(({ id }) => id === hidesId)?.name;
  const hides = hidden ? `You stand between the lens and “${hidden}” and hide ${partWords(hiddenShare)}. ` : '';
  return {
    ...told,
    severity: 'warning',
    message: `${pass.name}: ${hides}${hides ? 'The' : 'the'} lens sees you for ${secondsText(visibleSeconds)}, at one place for ${Math.round(100 * stillShare)} % of the exposure, and ${light}. Past about ${100 * limits.personShare} % a ghost shows. Crouch behind something, step out of the frame, keep moving, or put the lamp on a stand.`,
  };
};
