import { wrapRadians } from './frames-body.ts';
import { declinationOf, hourAngleOf } from './hour-angle.ts';
import { type HourSpan, hourSpans, type SkyWindow } from './hour-spans.ts';
import { nightCurve, spansUnder } from './night-curve.ts';
import { darkSunRadians, eventOf, horizonRadians, type SkyEvent } from './night-event.ts';
import { dayMilliseconds, millisecondsPerRadian, noonsRound } from './night-noon.ts';
import { type NightProbe, nightProbe } from './night-probe.ts';
import type { Span } from './night-spans.ts';
import type { SkyInput } from './sky-input.ts';

/** What is searched for. */
export interface CoreSearch {
  /** Where the centre of the Milky Way is wanted: over the subject, as the camera sees it. */
  readonly window: SkyWindow;
  /** How many nights from that of the input's instant, at least 1. */
  readonly nights: number;
  /** Whether only moments count at which the moon is down. */
  readonly moonDown: boolean;
}

/** A stretch of dark sky with the core in the window. */
export interface CoreStand {
  readonly start: SkyEvent;
  readonly end: SkyEvent;
  /** Half-way. */
  readonly moonAltitudeRadians: number;
  /** Half-way, 0 to 1. */
  readonly moonLitShare: number;
}

/** A night that has such stretches. */
export interface CoreNight {
  /** Noon before it, at the place, to some minutes. */
  readonly noonMilliseconds: number;
  readonly stands: readonly CoreStand[];
}

/** A height turns at most once in so long, so that no more need be looked at. */
const pieceMilliseconds = 7_200_000;

/** The stretches of a night at which the hour angle is in a span, from what it is at noon. */
const timesOf = (span: HourSpan, noonHourAngle: number, noon: number): readonly Span[] =>
  [-1, 0, 1].flatMap((turns) => {
    const after = wrapRadians(span.startRadians - noonHourAngle) + turns * 2 * Math.PI;
    const startMilliseconds = Math.max(noon, noon + after * millisecondsPerRadian);
    const endMilliseconds = Math.min(
      noon + dayMilliseconds,
      noon + (after + span.lengthRadians) * millisecondsPerRadian,
    );
    return startMilliseconds < endMilliseconds ? [{ startMilliseconds, endMilliseconds }] : [];
  });

/** The parts of a stretch in which a height is under a level. */
const partsUnder = (heightRadians: (at: number) => number, level: number, span: Span): readonly Span[] => {
  const pieces = Math.max(2, Math.ceil((span.endMilliseconds - span.startMilliseconds) / pieceMilliseconds));
  const curve = nightCurve((at) => Math.sin(heightRadians(at)), span.startMilliseconds, span.endMilliseconds, pieces);
  return spansUnder(curve, Math.sin(level));
};

const standOf = (probe: NightProbe, { startMilliseconds, endMilliseconds }: Span): CoreStand => {
  const moon = probe.moon((startMilliseconds + endMilliseconds) / 2);
  return {
    start: eventOf(probe.core, startMilliseconds),
    end: eventOf(probe.core, endMilliseconds),
    moonAltitudeRadians: moon.altitudeRadians,
    moonLitShare: moon.litShare,
  };
};

/**
 * When the centre of the Milky Way stands in a window of the sky while the sun is more than 18 degrees down, night by
 * night. Closed form in the hour angle for the core, so that a year takes no longer than a blink; edges are good to a
 * second or so. Nights without such a stretch are left out.
 *
 * @param input place, and the instant whose night comes first
 */
export const coreOver = (input: SkyInput, { window, nights, moonDown }: CoreSearch): readonly CoreNight[] => {
  const probe = nightProbe(input);
  const { latitudeRadians } = input;
  const [firstNoon] = noonsRound(probe, input.utcMilliseconds);
  return Array.from({ length: nights }, (_, night): CoreNight => {
    const noonMilliseconds = firstNoon + night * dayMilliseconds;
    const core = probe.core(noonMilliseconds);
    const noonHourAngle = hourAngleOf(core, latitudeRadians);
    const spans = hourSpans(latitudeRadians, declinationOf(core, latitudeRadians), window)
      .flatMap((span) => timesOf(span, noonHourAngle, noonMilliseconds))
      .flatMap((span) => partsUnder((at) => probe.sun(at).altitudeRadians, darkSunRadians, span))
      .flatMap((span) => (moonDown ? partsUnder(probe.moonTopRadians, horizonRadians, span) : [span]))
      .sort((a, b) => a.startMilliseconds - b.startMilliseconds);
    return { noonMilliseconds, stands: spans.map((span) => standOf(probe, span)) };
  }).filter(({ stands }) => stands.length > 0);
};
