import type { Cue } from '../../../core/card/count-cues.ts';

/** How a count is told to somebody who does not look. */
export type Sound = 'spoken' | 'vibrates' | 'both' | 'silent';

const canSpeak = (): boolean => 'speechSynthesis' in window;
const canVibrate = (): boolean => 'vibrate' in navigator;

/** The ways that this machine has, the fullest first. */
export const soundsHere = (): Sound[] => {
  const [speaks, vibrates] = [canSpeak(), canVibrate()];
  return [
    ...(speaks && vibrates ? (['both'] as const) : []),
    ...(speaks ? (['spoken'] as const) : []),
    ...(vibrates ? (['vibrates'] as const) : []),
    'silent',
  ];
};

export const soundWords: Readonly<Record<Sound, string>> = {
  both: 'Both',
  spoken: 'Speaks',
  vibrates: 'Vibrates',
  silent: 'Silent',
};

/** Milliseconds on, off, on. */
const pulses: Readonly<Record<Cue['kind'], number[]>> = {
  'lead-in': [30],
  on: [250],
  second: [60],
  stroke: [60, 60, 60],
  off: [250, 120, 250],
  open: [120, 80, 250],
  closed: [400, 120, 400],
};

/** Says a word at once; what was still being said is cut off. */
export const say = (words: string, sound: Sound): void => {
  if (!canSpeak() || (sound !== 'spoken' && sound !== 'both')) return;
  const utterance = new SpeechSynthesisUtterance(words);
  Object.assign(utterance, { lang: 'en', rate: 1.2 });
  speechSynthesis.cancel();
  speechSynthesis.speak(utterance);
};

export const announce = ({ kind, word }: Cue, sound: Sound): void => {
  say(word, sound);
  if (canVibrate() && (sound === 'vibrates' || sound === 'both')) navigator.vibrate(pulses[kind]);
};
