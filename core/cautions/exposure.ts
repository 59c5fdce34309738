import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { distance, dot, normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { emitterPeakPerLumen } from '../photometry/emitter.ts';
import { beamEscape } from '../readings/beam-escape.ts';
import { middleMoment } from '../readings/moments.ts';
import type { PassReading } from '../readings/pass-reading.ts';
import {
  type ChannelLevel,
  channelLevels,
  luminanceSecondsOf,
  type TargetReading,
  targetSurface,
} from '../readings/target-reading.ts';
import { meterReceiver } from '../trace/meter.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import { ratioFromStops } from '../units/stops.ts';
import type { PassCase, PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** Samples with which the other passes of a frame are metered; enough to tell burnt from not. */
const sumSamples = 8;

/** The channels of a surface under the pass alone, as its reading has them. */
const levelsAlone = ({ world, worldFrame, light }: PassCase, surface: SurfacePoint): ChannelLevel[] =>
  channelLevels(luminanceSecondsOf(surface, light, meterReceiver(world.stage, light.source, surface)), worldFrame);

/** The channels of a surface under all lamps of the frame together. */
const levelsTogether = ({ world, worldFrame }: PassCase, surface: SurfacePoint): ChannelLevel[] => {
  const sum = [0, 0, 0] as [number, number, number];
  for (const light of worldFrame.lights) {
    if (light.source.kind !== 'lamp') continue;
    const lux = meterReceiver(world.stage, light.source, surface, sumSamples);
    luminanceSecondsOf(surface, light, lux).forEach((value, c) => {
      sum[c] = (sum[c] as number) + value;
    });
  }
  return channelLevels(sum, worldFrame);
};

/** Which channels are full, in words. */
export const channelWords = (channels: readonly string[]): string =>
  channels.length === 3 ? 'all three channels' : channels.join(' and ');

/** What is said of channels over the sensor's limit, the fullest first. */
const burning = (levels: readonly ChannelLevel[]): string => {
  const full = levels.filter(({ stops }) => stops > limits.burntStops);
  const [{ channel, stops }] = full as [ChannelLevel];
  const who = channelWords(full.map((level) => level.channel));
  return `at the target ${who} ${full.length > 1 ? 'burn' : 'burns'}: ${channel} is ${stops.toFixed(1)} stops over mid-grey; the sensor is full at ${limits.burntStops.toFixed(1)}.`;
};

/** What brings a pass to the night level: its count, or what the count's reading advises. */
export const wayOut = ({ count }: PassReading): string => {
  const { wantedStops, spoken, advice } = count;
  const side = wantedStops < 0 ? 'under' : 'over';
  const level = wantedStops === 0 ? 'mid-grey' : `${Math.abs(wantedStops)} ${side} mid-grey`;
  const what = spoken === null ? advice.join(' ') : `count ${spoken}.`;
  // a lamp that stays lit and is right as it is has neither
  return what === '' ? '' : `For your night level, ${level}: ${what.charAt(0).toLowerCase()}${what.slice(1)}`;
};

/** The pass fills a channel of the sensor at its target, alone or together with the frame's other passes. */
export const burnt: PassRule = (passCase) => {
  const { world, pass, light, reading } = passCase;
  const { aim } = middleMoment(light);
  const surface = targetSurface(world.stage, world.view.position, aim);
  const own = reading.target?.brightest ?? null;
  if (!surface || own === null) return null;
  const isAlone = own.stops > limits.burntStops;
  const levels = (isAlone ? levelsAlone : levelsTogether)(passCase, surface);
  // lamps together give no less than the one of them
  const value = Math.max(own.stops, ...levels.map(({ stops }) => stops));
  // where another pass gives most of the light, it is that one's fault and is said there
  if (value <= limits.burntStops || own.stops < value - 2) return null;
  return {
    code: 'burnt',
    severity: 'danger',
    passId: pass.id,
    message: isAlone
      ? `${pass.name}: ${burning(levels)} ${wayOut(reading)}`.trimEnd()
      : `${pass.name}: with the frame’s other passes, ${burning(levels)} Shorten the counts together by ${ratioFromStops(value).toFixed(1)} times, or split them into frames.`,
    value,
    limit: limits.burntStops,
    ...(isAlone ? {} : { isTogether: true as const }),
  };
};

/** Share of what the beam's middle would give square on at the target's distance that really lands there. */
const landingShare = ({ world, light }: PassCase, { illuminanceLux }: TargetReading): number => {
  const { position, aim } = middleMoment(light);
  const surface = targetSurface(world.stage, world.view.position, aim) as SurfacePoint;
  const best = emitterPeakPerLumen(light.source.emitter) * luminanceOfLinearSrgb(light.strength);
  return (illuminanceLux * distance(position, surface.position) ** 2) / Math.max(best, 1e-12);
};

/** Why no light leaves the lamp toward its target, where that is the reason. */
const whyNone = ({ world, light }: PassCase): string | null => {
  if (luminanceOfLinearSrgb(light.strength) <= 0)
    return 'no light leaves the lamp: its level, or a gel, lets none out.';
  const { position, aim } = middleMoment(light);
  const surface = targetSurface(world.stage, world.view.position, aim);
  const { front } = light.source.emitter;
  if (!surface || !front) return null;
  const [toAim, toTarget] = [sub(aim, position), sub(surface.place, position)].map(normalize) as [Vec3, Vec3];
  return dot(toAim, toTarget) < front.cosSnoot
    ? 'its snoot keeps the light from the surface that you see at its aim.'
    : null;
};

/** The pass gives its target too little light to matter, or none. Light from behind is meant to leave the face dark. */
export const tooDark: PassRule = (passCase) => {
  const { pass, reading } = passCase;
  const say = (severity: 'note' | 'warning', message: string, value?: number) => ({
    code: 'too-dark',
    severity,
    passId: pass.id,
    message: `${pass.name}: ${message}`,
    ...(value === undefined ? {} : { value }),
    limit: limits.tooDarkStops,
  });
  if (!reading.target)
    // a beam that goes up there is told by `beam-at-sky`
    return beamEscape(passCase.world.stage, passCase.light).axisEscapes
      ? null
      : say('warning', 'the camera sees only sky where it is aimed, nothing for it to light. Aim it again.');
  const { stops } = reading.target;
  if (stops === null) {
    if (reading.offAxisDegrees >= limits.backLightDegrees) return null;
    return say(
      'note',
      whyNone(passCase) ??
        'no direct light of this pass reaches the surface that you see at its aim. Something stands between, or the lamp is behind the surface.',
    );
  }
  if (stops >= limits.tooDarkStops) return null;
  if (landingShare(passCase, reading.target) < limits.missesShare)
    return say(
      'warning',
      `${(-stops).toFixed(0)} stops under mid-grey at the target: hardly any of this light lands there. Aim it again.`,
      stops,
    );
  return say(
    'warning',
    `${(-stops).toFixed(1)} stops under mid-grey at the target. ${wayOut(reading)}`.trimEnd(),
    stops,
  );
};
