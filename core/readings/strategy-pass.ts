import type { Frame, Lamp, Pass, Setup } from '../setup/schema/setup.ts';
import { exactSeconds } from '../units/third-stops.ts';
import type { World, WorldFrame } from '../world/world.ts';
import { countReading } from './count-reading.ts';
import { middleMoment } from './moments.ts';
import type { Draft } from './strategy-drafts.ts';
import type { Strategy } from './strategy-frames.ts';
import type { LampSetting } from './strategy-setting.ts';
import { levelOf } from './strategy-wanted.ts';
import { targetReading, targetSurface } from './target-reading.ts';

/** What a strategy makes of one pass. */
export interface PlannedPass extends LampSetting {
  readonly name: string;
  /** Whether it stays lit for the whole shutter, so that nobody counts. */
  readonly staysLit: boolean;
  /** A walked lamp that was put on a stand half-way. */
  readonly wasWalked: boolean;
  /** Of its target then, from mid-grey; null where that gets none of its light. */
  readonly stops: number | null;
  /** On the target while it is lit; null as `stops`. */
  readonly illuminanceLux: number | null;
  /** By how much the wanted level is missed, stops: positive too bright, negative too dark; null where it is met. */
  readonly missStops: number | null;
  /** What would do it, where the level is missed; best first. */
  readonly advice: readonly string[];
}

/** A level missed by less than this nobody minds, stops. */
const unmindedStops = 0.5;

/** In one frame, all lamps are bound to what the stars need. */
const ownFrameAdvice = 'Or give it a painted frame of its own.';

/** Reads a pass that a strategy has set and laid out, as it will be. */
export const plannedPass = (
  setup: Setup,
  strategy: Strategy,
  { pass: { id, name, lampId }, wasWalked, wantedStops, setting }: Draft & { readonly setting: LampSetting },
  frame: Frame,
  world: World,
  worldFrame: WorldFrame,
): PlannedPass => {
  const pass = frame.passes.find((each) => each.id === id) as Pass;
  const staysLit = pass.held === 'stand' && strategy !== 'separate';
  const base = { ...setting, name, staysLit, wasWalked };
  const level = levelOf(world, worldFrame, id);
  const moment = middleMoment(level.light);
  const surface = targetSurface(world.stage, world.view.position, moment.aim);
  const target = surface ? targetReading(world.stage, surface, level.light, worldFrame) : null;
  const miss = level.stops - wantedStops;
  const isMissed = Math.abs(miss) > unmindedStops;
  const { advice } = countReading({
    stage: world.stage,
    light: level.light,
    surface,
    target,
    moment,
    levelPercent: pass.levelPercent,
    lowestLevelPercent: (setup.lamps.find((lamp) => lamp.id === lampId) as Lamp).lowestLevelPercent,
    staysLit,
    frameSeconds: exactSeconds(frame.seconds),
    iso: worldFrame.exposure.iso,
    wantedStops,
  });
  return {
    ...base,
    stops: target?.stops ?? null,
    illuminanceLux: target?.stops === null || !target ? null : target.illuminanceLux,
    missStops: isMissed ? miss : null,
    advice: isMissed ? [...advice, ...(strategy === 'separate' ? [] : [ownFrameAdvice])] : [],
  };
};
