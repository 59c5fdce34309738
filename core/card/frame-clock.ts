import type { Night } from '../setup/schema/setup.ts';
import { type Cue, countCues, countState } from './count-cues.ts';
import type { CardFrame, FieldCard } from './field-card.ts';
import { goingOf } from './tonight.ts';

/** A pass within an opening of the shutter, in seconds from when it opens. */
export interface ClockPass {
  readonly rowNumber: number;
  readonly onSeconds: number;
  readonly seconds: number;
  readonly strokes: number;
}

/** One opening of the shutter, from the tap on. */
export interface FrameClock {
  readonly delaySeconds: number;
  readonly shutterSeconds: number;
  /** In the order in which their lamps go on; those that shine all the time are not in it. */
  readonly passes: readonly ClockPass[];
}

/**
 * The clock of a frame as its passes are to be gone next. One that is gone on foot begins when it was planned to, or as long
 * after the one before it as was planned, where that takes longer than planned. What is past the shutter is cut off.
 *
 * @param frameNumber of a frame of the card, from 1
 */
export const frameClock = (card: FieldCard, frameNumber: number, night: Night | null): FrameClock => {
  const { delaySeconds, seconds: shutterSeconds } = card.frames.find(
    ({ number, count }) => frameNumber >= number && frameNumber < number + count,
  ) as CardFrame;
  let lateSeconds = 0;
  const passes = card.rows
    .filter((row) => row.frameNumber === frameNumber && !row.staysOn)
    .map((row): ClockPass => {
      const { seconds } = goingOf(card, row, night);
      const onSeconds = row.onSeconds + (row.isHeld ? lateSeconds : 0);
      if (row.isHeld) lateSeconds = Math.max(0, lateSeconds + seconds - row.countSeconds);
      return { rowNumber: row.number, onSeconds, seconds, strokes: row.strokes };
    });
  return { delaySeconds, shutterSeconds, passes: passes.flatMap(cutAt(shutterSeconds)) };
};

const cutAt =
  (shutterSeconds: number) =>
  (pass: ClockPass): ClockPass[] => {
    const seconds = Math.min(pass.seconds, shutterSeconds - pass.onSeconds);
    return seconds > 0 ? [{ ...pass, seconds }] : [];
  };

/** Seconds that are counted down before the shutter opens and before a lamp goes on, where there is time. */
const mostLeadIn = 3;
/** Things nearer to each other than this are said together, seconds. */
const togetherSeconds = 0.5;

const leadInBefore = ({ passes }: FrameClock, { onSeconds, rowNumber }: ClockPass): number => {
  const others = passes.filter((each) => each.rowNumber !== rowNumber && each.onSeconds < onSeconds);
  const freeFrom = Math.max(0, ...others.map((each) => each.onSeconds + each.seconds));
  return Math.max(0, Math.min(mostLeadIn, Math.ceil(onSeconds - freeFrom) - 1));
};

/** All that is said from the tap on: the delay’s last seconds, “open”, each lamp with its count, “closed”. */
export const clockCues = (clock: FrameClock): Cue[] => {
  const { delaySeconds, shutterSeconds, passes } = clock;
  const delayLeadIn = Math.min(mostLeadIn, Math.floor(delaySeconds));
  const delay = countCues({ leadInSeconds: delayLeadIn, seconds: 0, strokes: 1 })
    .filter(({ kind }) => kind === 'lead-in')
    .map((cue) => ({ ...cue, at: delaySeconds - delayLeadIn + cue.at }));
  const isAtOpening = passes.some(({ onSeconds }) => onSeconds < togetherSeconds);
  const lastOff = Math.max(0, ...passes.map(({ onSeconds, seconds }) => onSeconds + seconds));
  const isAtClosing = passes.length > 0 && shutterSeconds - lastOff < togetherSeconds;
  const own = passes.flatMap((pass) => {
    const leadInSeconds = leadInBefore(clock, pass);
    const begin = delaySeconds + pass.onSeconds - leadInSeconds;
    const offAt = pass.onSeconds + pass.seconds;
    return countCues({ leadInSeconds, seconds: pass.seconds, strokes: pass.strokes }).map((cue): Cue => {
      const at = begin + cue.at;
      if (cue.kind === 'on')
        return { ...cue, at, word: pass.onSeconds < togetherSeconds ? 'open, lamp on' : 'lamp on' };
      if (cue.kind === 'off' && isAtClosing && offAt === lastOff) return { ...cue, at, word: 'off, closed' };
      return { ...cue, at };
    });
  });
  return [
    ...delay,
    ...(isAtOpening ? [] : [{ at: delaySeconds, kind: 'open', word: 'open' } as const]),
    ...own,
    ...(isAtClosing ? [] : [{ at: delaySeconds + shutterSeconds, kind: 'closed', word: 'closed' } as const]),
  ].sort((a, b) => a.at - b.at);
};

/** How a frame stands so long after the tap, by the clock: however long nobody looked. */
export interface ClockState {
  readonly phase: 'delay' | 'open' | 'on' | 'closed';
  /** Whole seconds: of the delay, left; else since the shutter opened. */
  readonly shown: number;
  /** The pass whose lamp is on, or goes on next; null after the last. */
  readonly rowNumber: number | null;
  /** Whole seconds that the lamp is on, or until it goes on. */
  readonly lampSeconds: number;
  readonly stroke: number;
}

export const clockState = (
  { delaySeconds, shutterSeconds, passes }: FrameClock,
  elapsedSeconds: number,
): ClockState => {
  const open = elapsedSeconds - delaySeconds;
  const pass = passes.find(({ onSeconds, seconds }) => open < onSeconds + seconds) ?? null;
  const rowNumber = pass?.rowNumber ?? null;
  const none = { rowNumber, lampSeconds: 0, stroke: 1 };
  if (open < 0) return { ...none, phase: 'delay', shown: Math.ceil(-open) };
  if (open >= shutterSeconds) return { ...none, phase: 'closed', shown: Math.floor(shutterSeconds), rowNumber: null };
  const shown = Math.floor(open);
  if (!pass) return { ...none, phase: 'open', shown };
  const count = countState({ ...pass, leadInSeconds: 0 }, open - pass.onSeconds);
  return count.phase === 'on'
    ? { phase: 'on', shown, rowNumber, lampSeconds: count.shown, stroke: count.stroke }
    : { ...none, phase: 'open', shown, lampSeconds: Math.ceil(pass.onSeconds - open) };
};
