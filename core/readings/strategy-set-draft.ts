import { litFrom } from '../passes/lit-from.ts';
import type { Frame, Lamp, Pass, Setup } from '../setup/schema/setup.ts';
import { exactSeconds } from '../units/third-stops.ts';
import type { World, WorldFrame } from '../world/world.ts';
import { type PassLight, secondsForLevel } from './count.ts';
import { densityOf, mostDensity } from './strategy-density.ts';
import type { Draft } from './strategy-drafts.ts';
import type { Strategy } from './strategy-frames.ts';
import { countedSetting, type LampSetting, standingSetting } from './strategy-setting.ts';
import { levelOf } from './strategy-wanted.ts';

/** Nobody keeps a shutter open for longer, to paint; common practice, no published source. */
const longestSeconds = 900;

/** A draft with its lamp set; its pass is lit from the shutter on, for as long as it should be. */
export interface SetDraft extends Draft {
  readonly setting: LampSetting;
  /** Count that would give the night level, seconds. */
  readonly nightSeconds: number;
}

/** How long a stroke takes whose lamp is walked, seconds; null where it is held in one place. */
export const strokeOf = ({ held, waypoints, on, off }: Pass): number | null =>
  held === 'hand' && waypoints.length > 1 ? off - on : null;

/**
 * Sets the lamp of a pass from what it gives at full level.
 *
 * @param full the pass at full level without density, in the frame and world that follow
 * @param present the pass as the scheme has it
 * @param handCount how many passes of the new scheme are held by hand
 */
export const setDraft = (
  setup: Setup,
  strategy: Strategy,
  full: Draft,
  present: Pass,
  [frame, worldFrame, world]: readonly [Frame, WorldFrame, World],
  handCount: number,
): SetDraft => {
  const { lowestLevelPercent } = setup.lamps.find(({ id }) => id === full.pass.lampId) as Lamp;
  const range = { lowestLevelPercent, mostNdStops: mostDensity(full.pass.gels) };
  const level = levelOf(world, worldFrame, full.pass.id);
  const light: PassLight = {
    seconds: level.light.seconds,
    levelPercent: 100,
    iso: worldFrame.exposure.iso,
    stops: level.stops,
  };
  const staysLit = full.pass.held === 'stand' && strategy !== 'separate';
  const room =
    strategy === 'separate'
      ? { mostSeconds: longestSeconds, easyMostSeconds: longestSeconds }
      : { mostSeconds: frame.seconds, easyMostSeconds: frame.seconds / (2 * Math.max(handCount, 1)) };
  const setting = staysLit
    ? standingSetting(light, full.wantedStops, exactSeconds(frame.seconds), range)
    : countedSetting(
        light,
        full.wantedStops,
        { presentPercent: present.levelPercent, strokeSeconds: strokeOf(present), ...room },
        range,
      );
  const { levelPercent, ndStops, seconds } = setting;
  const pass = litFrom(full.pass, 0, staysLit ? frame.seconds : seconds);
  const gels = [...full.pass.gels, ...densityOf(ndStops)];
  const nightSeconds = full.isOnTarget
    ? (100 * 2 ** ndStops * secondsForLevel(light, setup.nightLevelStops)) / levelPercent
    : seconds;
  return { ...full, pass: { ...pass, levelPercent, gels }, setting, nightSeconds };
};
