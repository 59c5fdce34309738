import { shutterText } from '../ui/words.ts';

/** Pixels before the shutter, for the delay and the walk during it. */
export const delayPixels = 120;
/** Pixels before the delay, and behind the shutter, so that their marks are whole. */
const edgePixels = 14;

/** A frame's clock laid on a track of the screen. */
export interface Track {
  readonly width: number;
  readonly seconds: number;
  readonly pixelsPerSecond: number;
  /** Whether the delay is drawn shorter than the frame's own scale would have it. */
  readonly isDelayShortened: boolean;
  /** Pixel of a time after the shutter opens; below 0 in the delay. */
  x(seconds: number): number;
  /** Time at a pixel, by the frame's own scale. */
  secondsAt(x: number): number;
}

/** Every frame has a scale of its own, on which its shutter opens and closes at the same two places. */
export const trackOf = (width: number, seconds: number, delaySeconds: number): Track => {
  const pixelsPerSecond = Math.max(width - delayPixels - edgePixels, 1) / seconds;
  const room = delayPixels - edgePixels;
  const isDelayShortened = delaySeconds * pixelsPerSecond > room;
  const ofDelay = isDelayShortened ? room / delaySeconds : pixelsPerSecond;
  return {
    width,
    seconds,
    pixelsPerSecond,
    isDelayShortened,
    x: (time) => delayPixels + time * (time < 0 ? ofDelay : pixelsPerSecond),
    secondsAt: (x) => (x - delayPixels) / pixelsPerSecond,
  };
};

/** Steps that a scale of seconds is marked in. */
const steps = [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60, 120, 300, 600, 1800, 3600, 7200];

/** Times that are marked on a track, the shutter's own two left out where they would touch it: at least `apartPixels` apart. */
export const ticksOf = ({ seconds, pixelsPerSecond }: Track, apartPixels: number): number[] => {
  const step = steps.find((each) => each * pixelsPerSecond >= apartPixels) ?? 36000;
  const count = Math.floor(seconds / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, i) => Number((i * step).toFixed(6)));
};

/** Seconds on a clock: "0", "0.5", "12". */
export const clockSeconds = (seconds: number): string => (seconds === 0 ? '0' : shutterText(seconds));

/** Whole steps that a drag goes in, seconds. */
export const dragStepSeconds = 0.5;

/** A dragged time: to the half second, or as free as a pixel allows. */
export const snapped = (seconds: number, isFree: boolean): number => {
  const step = isFree ? 0.01 : dragStepSeconds;
  return Number((Math.round(seconds / step) * step).toFixed(6)) + 0;
};
