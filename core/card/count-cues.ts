/** What is counted: a lead-in, then the seconds of a pass, its strokes one after the other. */
export interface CountPlan {
  readonly leadInSeconds: number;
  readonly seconds: number;
  readonly strokes: number;
}

/** Something to say: `at` in seconds from when the count was begun. */
export interface Cue {
  readonly at: number;
  readonly kind: 'lead-in' | 'on' | 'second' | 'stroke' | 'off' | 'open' | 'closed';
  /** As it is spoken: "two", "on", "5", "stroke 2", "off". */
  readonly word: string;
}

const leadInWords = ['one', 'two', 'three', 'four', 'five'];

/**
 * All cues of a count, in order: so many seconds of lead-in counted down, “on”, each whole second, each further stroke as it
 * begins (in place of a second that falls on it), “off”. A count of 1.6 s says on, 1, off.
 */
export const countCues = ({ leadInSeconds, seconds, strokes }: CountPlan): Cue[] => {
  const leadIn = Array.from({ length: leadInSeconds }, (_, i): Cue => {
    const left = leadInSeconds - i;
    return { at: i, kind: 'lead-in', word: leadInWords[left - 1] ?? String(left) };
  });
  const turns = Array.from({ length: strokes - 1 }, (_, i): Cue => {
    const stroke = i + 2;
    return { at: leadInSeconds + (seconds * (i + 1)) / strokes, kind: 'stroke', word: `stroke ${stroke}` };
  });
  const isNearTurn = (at: number) => turns.some((turn) => Math.abs(turn.at - at) < 0.4);
  const whole = Array.from({ length: Math.max(Math.ceil(seconds - 1e-9) - 1, 0) }, (_, i): Cue => {
    const second = i + 1;
    return { at: leadInSeconds + second, kind: 'second', word: String(second) };
  }).filter(({ at }) => !isNearTurn(at));
  const middle = [...whole, ...turns].sort((a, b) => a.at - b.at);
  return [
    ...leadIn,
    { at: leadInSeconds, kind: 'on', word: 'on' },
    ...middle,
    { at: leadInSeconds + seconds, kind: 'off', word: 'off' },
  ];
};

/** How a count stands so long after it was begun, by the clock: however long nobody looked. */
export interface CountState {
  readonly phase: 'lead-in' | 'on' | 'over';
  /** Whole seconds left of the lead-in, or gone by with the lamp on. */
  readonly shown: number;
  readonly stroke: number;
}

export const countState = ({ leadInSeconds, seconds, strokes }: CountPlan, elapsedSeconds: number): CountState => {
  const on = elapsedSeconds - leadInSeconds;
  if (on < 0) return { phase: 'lead-in', shown: Math.ceil(-on), stroke: 1 };
  if (on >= seconds) return { phase: 'over', shown: Number(seconds.toPrecision(3)), stroke: strokes };
  return { phase: 'on', shown: Math.floor(on), stroke: Math.min(strokes, 1 + Math.floor((on / seconds) * strokes)) };
};

/** The newest cue that fell due between two looks, null for none: what a sleeping page missed is not said after it. */
export const dueCue = (cues: readonly Cue[], beforeSeconds: number, nowSeconds: number): Cue | null =>
  cues.findLast(({ at }) => at > beforeSeconds && at <= nowSeconds) ?? null;
