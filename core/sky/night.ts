import { radiansFromDegrees } from '../units/angle.ts';
import { wrapRadians } from './frames-body.ts';
import { hourAngleOf } from './hour-angle.ts';
import { type Crossing, crossingsOf, highestOf, nightCurve, spansOver, spansUnder } from './night-curve.ts';
import { darkSunRadians, eventOf, horizonRadians, type SkyEvent, sunRadiusRadians } from './night-event.ts';
import { type MoonPhaseName, moonAgeDays, moonPhaseName } from './night-moon.ts';
import { millisecondsPerRadian, noonsRound } from './night-noon.ts';
import { type NightProbe, nightProbe } from './night-probe.ts';
import { type Span, spansInBoth } from './night-spans.ts';
import type { SkyInput } from './sky-input.ts';
import type { SkyBody } from './sky-state.ts';

/** A night from one noon of the sun to the next. What does not happen in it is null. */
export interface Night {
  readonly startMilliseconds: number;
  readonly endMilliseconds: number;
  /** The sun at its lowest. */
  readonly darkest: SkyEvent;
  /** The sun at the noon that begins the night: tells whether a missing sunset means that it stays up or down. */
  readonly noonAltitudeRadians: number;
  readonly sunset: SkyEvent | null;
  readonly civilDusk: SkyEvent | null;
  readonly nauticalDusk: SkyEvent | null;
  readonly astronomicalDusk: SkyEvent | null;
  readonly astronomicalDawn: SkyEvent | null;
  readonly nauticalDawn: SkyEvent | null;
  readonly civilDawn: SkyEvent | null;
  readonly sunrise: SkyEvent | null;
  /** The first of each in the night, which may be in daylight. */
  readonly moonrise: SkyEvent | null;
  readonly moonset: SkyEvent | null;
  readonly moonUp: readonly Span[];
  readonly moonPhase: MoonPhaseName;
  /** At the darkest moment, 0 to 1. */
  readonly moonLitShare: number;
  /** Days since new moon at the darkest moment. */
  readonly moonAgeDays: number | null;
  /** The sun more than 18 degrees down. */
  readonly dark: readonly Span[];
  /** The same, and the moon down. */
  readonly darkMoonless: readonly Span[];
  readonly core: NightCore;
}

/** The centre of the Milky Way in a night. */
export interface NightCore {
  readonly rise: SkyEvent | null;
  readonly set: SkyEvent | null;
  /** Null where it stays down. */
  readonly highest: SkyEvent | null;
  /** Up while the sky is dark. */
  readonly upInDark: readonly Span[];
  readonly highestInDark: SkyEvent | null;
}

const civilRadians = radiansFromDegrees(-6);
const nauticalRadians = radiansFromDegrees(-12);
const pieces = 32;

type Sight = (milliseconds: number) => SkyBody;
const firstEvent = (sight: Sight, crossings: readonly Crossing[], rises: boolean): SkyEvent | null => {
  const crossing = crossings.find((one) => one.rises === rises);
  return crossing ? eventOf(sight, crossing.milliseconds) : null;
};

const isIn = (at: number, span: Span): boolean => at >= span.startMilliseconds && at <= span.endMilliseconds;

const nightCore = (
  probe: NightProbe,
  latitudeRadians: number,
  start: number,
  end: number,
  dark: readonly Span[],
): NightCore => {
  const curve = nightCurve((at) => Math.sin(probe.core(at).altitudeRadians), start, end, pieces);
  const level = Math.sin(horizonRadians);
  const crossings = crossingsOf(curve, level);
  const up = spansOver(curve, level);
  const upInDark = spansInBoth(dark, up);
  // Within a turn of the sky against the stars it is once at its highest, and a night is four minutes longer than that.
  const before = wrapRadians(-hourAngleOf(probe.core(start), latitudeRadians));
  const transit = start + before * millisecondsPerRadian;
  const best = upInDark
    .flatMap((span) => [span.startMilliseconds, span.endMilliseconds, transit].filter((at) => isIn(at, span)))
    .map((at) => eventOf(probe.core, at))
    .reduce<SkyEvent | null>((a, b) => (a === null || b.altitudeRadians > a.altitudeRadians ? b : a), null);
  return {
    rise: firstEvent(probe.core, crossings, true),
    set: firstEvent(probe.core, crossings, false),
    highest: up.length > 0 ? eventOf(probe.core, transit) : null,
    upInDark,
    highestInDark: best,
  };
};

/**
 * The night round an instant, from noon to noon of the sun at the place: a clock may stand hours off the sun, and the
 * night lies within all the same. Times hold for a level horizon at the height of the sea: a ridge hides the sun
 * sooner, and refraction of the day shifts rise and set by a minute or so, by more in high latitudes.
 *
 * Sources: rise and set as the almanac offices define them (upper edge, 34' of refraction); twilights at 6, 12 and 18
 * degrees.
 */
export const nightRound = (input: SkyInput): Night => {
  const probe = nightProbe(input);
  const [start, end] = noonsRound(probe, input.utcMilliseconds);
  const sun = nightCurve((at) => Math.sin(probe.sun(at).altitudeRadians), start, end, pieces);
  const sunAt = (radians: number) => crossingsOf(sun, Math.sin(radians));
  const moon = nightCurve((at) => Math.sin(probe.moonTopRadians(at)), start, end, pieces);
  const [rising, civil, nautical, astronomical] = [
    sunAt(horizonRadians - sunRadiusRadians),
    sunAt(civilRadians),
    sunAt(nauticalRadians),
    sunAt(darkSunRadians),
  ];
  const moonCrossings = crossingsOf(moon, Math.sin(horizonRadians));
  const dark = spansUnder(sun, Math.sin(darkSunRadians));
  const darkest = eventOf(probe.sun, highestOf({ ...sun, points: sun.points.map((p) => ({ ...p, value: -p.value })) }));
  const event = (crossings: readonly Crossing[], rises: boolean) => firstEvent(probe.sun, crossings, rises);
  return {
    startMilliseconds: start,
    endMilliseconds: end,
    darkest,
    noonAltitudeRadians: probe.sun(start).altitudeRadians,
    sunset: event(rising, false),
    civilDusk: event(civil, false),
    nauticalDusk: event(nautical, false),
    astronomicalDusk: event(astronomical, false),
    astronomicalDawn: event(astronomical, true),
    nauticalDawn: event(nautical, true),
    civilDawn: event(civil, true),
    sunrise: event(rising, true),
    moonrise: firstEvent(probe.moon, moonCrossings, true),
    moonset: firstEvent(probe.moon, moonCrossings, false),
    moonUp: spansOver(moon, Math.sin(horizonRadians)),
    moonPhase: moonPhaseName(start, end),
    moonLitShare: probe.moon(darkest.utcMilliseconds).litShare,
    moonAgeDays: moonAgeDays(darkest.utcMilliseconds),
    dark,
    darkMoonless: spansInBoth(dark, spansUnder(moon, Math.sin(horizonRadians))),
    core: nightCore(probe, input.latitudeRadians, start, end, dark),
  };
};
