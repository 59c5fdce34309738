import { retimedPass } from '../passes/retimed-pass.ts';
import type { Frame, Lamp, Pass } from '../setup/schema/setup.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { exactSeconds } from '../units/third-stops.ts';

/** A pass after its dose was changed. */
export interface DosedPass {
  readonly pass: Pass;
  /** By how much the dose misses what was wanted: positive too much light, negative too little; null when it is met. */
  readonly missStops: number | null;
}

/** Shortest time that a pass is set to, seconds: that of the count on screen. */
const shortestSeconds = 0.01;
/** Two doses that are nearer than this count as one. */
const leastShare = 1e-9;

const clamp = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);

/** How long a pass shines, as `buildWorld` has it: one that is lit for the whole frame is lit for its exact time. */
const litSeconds = ({ on, off }: Pass, { seconds }: Frame): number =>
  on === 0 && off >= seconds ? exactSeconds(seconds) : off - on;

/** The pass lit for so long, as far as the frame holds it. A lamp that is walked walks the same way, faster or slower. */
const withSeconds = (pass: Pass, frame: Frame, seconds: number): Pass => {
  const length = clamp(seconds, Math.min(shortestSeconds, frame.seconds), frame.seconds);
  const on = clamp(pass.on, 0, frame.seconds - length);
  // on + length may round to a hair past the frame's end
  const off = Math.min(on + length, frame.seconds);
  return retimedPass(pass, on, off) ?? pass;
};

/**
 * The pass with a multiple of its dose: by its level, between the lamp's lowest and full; what is left by its time,
 * between 0.01 s and the frame's. Reciprocity holds: dose is level times time.
 *
 * @param factor how many times the present dose, above 0; the level of the pass must be above 0 too
 */
export const withDose = (pass: Pass, lamp: Lamp, frame: Frame, factor: number): DosedPass => {
  const level = (percentSeconds: number, seconds: number) =>
    clamp(percentSeconds / seconds, lamp.lowestLevelPercent, 100);
  const seconds = litSeconds(pass, frame);
  const wanted = pass.levelPercent * seconds * factor;
  const wantedSeconds = wanted / level(wanted, seconds);
  const keepsTime = Math.abs(wantedSeconds / seconds - 1) < leastShare;
  const timed = keepsTime ? pass : withSeconds(pass, frame, wantedSeconds);
  // a whole frame lasts a little more or less than its marking says; the level makes up for it
  const got = litSeconds(timed, frame);
  const levelPercent = level(wanted, got);
  const miss = stopsFromRatio((levelPercent * got) / wanted);
  return {
    pass: { ...timed, levelPercent },
    missStops: Math.abs(miss) < leastShare * 10 ? null : miss,
  };
};
