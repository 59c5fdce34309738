import { lightThroughGels } from '../colour/gel.ts';
import type { Triple } from '../colour/matrix.ts';
import { whiteLinearSrgb } from '../colour/white-locus.ts';
import { add, distance, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import type { Camera, Frame, Lamp, Pass, Setup } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { ratioFromStops } from '../units/stops.ts';
import { exactSeconds } from '../units/third-stops.ts';
import { body } from '../walk/body.ts';
import { airOf, throughAir } from './air.ts';
import { airLight } from './air-light.ts';
import { worldFromDocument } from './axes.ts';
import { feetOf, holderInOpenAir } from './holder.ts';
import { hourSkyOf } from './hour-sky.ts';
import { dressedEmitter, emitterOf, realFluxOf } from './lamp-light.ts';
import { type PathPoint, placeAtShare, strokesGone } from './lamp-place.ts';
import { skyLights } from './sky-lights.ts';
import { type Holder, meanMoonRadiusRadians, type WorldLight } from './source.ts';
import type { Stage } from './stage.ts';

const scaled = (v: Triple, s: number): Triple => [v[0] * s, v[1] * s, v[2] * s];
const colourOf = (kelvin: number): Triple => whiteLinearSrgb(kelvin).map((v) => Math.max(v, 0)) as unknown as Triple;

const holderOf = ({ held }: Pass, { drawn }: Camera, { walking }: Setup): Holder | null =>
  held === 'hand' ? { reflectance: body.reflectance[walking.clothes], isDrawn: drawn.holder } : null;

/** To a billionth: rounding of times that are moved or stretched must not make another source of the same way. */
const rounded = (value: number): number => Number(value.toFixed(9));
const roundedPlace = (place: Pass['waypoints'][number]['position']): Vec3 => {
  const [x, y, z] = worldFromDocument(place);
  return [rounded(x), rounded(y), rounded(z)];
};

/** The way of a pass. A lamp that stands is the same source whenever it is lit, so that a new count traces nothing. */
const pathOf = (pass: Pass): PathPoint[] =>
  pass.waypoints.map(({ time, position, aim }) => ({
    seconds: pass.waypoints.length === 1 ? 0 : rounded(strokesGone(pass, time)),
    position: roundedPlace(position),
    aim: roundedPlace(aim),
  }));

const lightOfPass = (pass: Pass, frame: Frame, camera: Camera, setup: Setup): WorldLight => {
  const lamp = setup.lamps.find(({ id }) => id === pass.lampId) as Lamp;
  const { tint, transmission } = lightThroughGels(lamp.temperatureKelvin, pass.gels);
  const clothShare = ratioFromStops(-(pass.cloth?.stops ?? 0));
  // a lamp lit as long as the shutter is open is lit for its real time: 16 s behind a marked 15
  const off = pass.on === 0 && pass.off >= frame.seconds ? exactSeconds(frame.seconds) : pass.off;
  return {
    id: pass.id,
    source: {
      kind: 'lamp',
      emitter: dressedEmitter(emitterOf(lamp, setup.measuredBeams), pass),
      path: pathOf(pass),
      onOff: [0, 1],
      holder: holderOf(pass, camera, setup),
    },
    strength: scaled(
      tint,
      realFluxOf(lamp, setup.measuredBeams) * (pass.levelPercent / 100) * transmission * clothShare,
    ),
    seconds: off - pass.on,
    lit: [pass.on, off],
    holderLuminance: null,
  };
};

/** The plain moonlight and skylight that the document states. */
const plainAmbient = (place: Setup['place'], seconds: number): WorldLight[] => {
  const lights: WorldLight[] = [];
  if (place.moonlight) {
    const { bearingDegrees, altitudeDegrees, illuminanceLux, temperatureKelvin } = place.moonlight;
    const [b, a] = [radiansFromDegrees(bearingDegrees), radiansFromDegrees(altitudeDegrees)];
    const toward: Vec3 = [Math.sin(b) * Math.cos(a), Math.sin(a), -Math.cos(b) * Math.cos(a)];
    lights.push({
      id: 'moon',
      source: { kind: 'moon', toward, radiusRadians: meanMoonRadiusRadians },
      strength: scaled(colourOf(temperatureKelvin), illuminanceLux),
      seconds,
      lit: [0, seconds],
      holderLuminance: null,
    });
  }
  const { illuminanceLux, temperatureKelvin } = place.skylight;
  lights.push({
    id: 'sky',
    source: { kind: 'sky' },
    strength: scaled(colourOf(temperatureKelvin), illuminanceLux),
    seconds,
    lit: [0, seconds],
    holderLuminance: null,
  });
  return lights;
};

const ambientOf = ({ place }: Setup, seconds: number): WorldLight[] => {
  const sky = hourSkyOf(place);
  return sky ? skyLights(sky, airOf(place), seconds) : plainAmbient(place, seconds);
};

/** Strength of all skylight together, even or as it is spread over the dome. */
const skyStrength = (ambient: readonly WorldLight[]): Triple =>
  ambient
    .filter(({ source }) => source.kind === 'sky' || source.kind === 'dome')
    .reduce<Triple>((sum, { strength }) => add(sum, strength), [0, 0, 0]);

/**
 * A luminance as it is seen past haze, with what haze gives by moon and sky: as in traced light, which is taken away where
 * somebody stands.
 */
const pastHaze = (at: Triple, from: Vec3, eye: Vec3, ambient: readonly WorldLight[], { air }: Stage): Triple => {
  const through = throughAir(air, distance(from, eye));
  const direction = normalize(sub(from, eye));
  return ambient.reduce<Triple>(
    (sum, { source, strength }) => add(sum, scale(strength, airLight(source, direction, through))),
    scale(at, through),
  );
};

/**
 * A light with its holder, who stands in the open air: half-way through the pass for all of it. Haze dims what the eye sees
 * of them; moonlight falls on them as in clear air.
 */
const withHolder = (light: WorldLight, ambient: readonly WorldLight[], stage: Stage, eye: Vec3): WorldLight => {
  const { source } = light;
  if (source.kind !== 'lamp' || !source.holder?.isDrawn) return light;
  const moon = ambient.find((each) => each.source.kind === 'moon');
  const feet = feetOf(stage, placeAtShare(source, 0.5));
  const inOpenAir = holderInOpenAir(stage, feet, eye, source.holder.reflectance, {
    moon: moon?.source.kind === 'moon' ? { toward: moon.source.toward, lux: moon.strength } : null,
    sky: skyStrength(ambient),
  });
  const middle: Vec3 = [feet[0], feet[1] + body.heightMetres / 2, feet[2]];
  return { ...light, holderLuminance: stage.air ? pastHaze(inOpenAir, middle, eye, ambient, stage) : inOpenAir };
};

/** All light of a frame: its passes in order, then moon and sky. */
export const lightsOf = (frame: Frame, camera: Camera, setup: Setup, stage: Stage): WorldLight[] => {
  const ambient = ambientOf(setup, exactSeconds(frame.seconds));
  const eye = worldFromDocument(camera.position);
  const passes = frame.passes.map((pass) => lightOfPass(pass, frame, camera, setup));
  return [...passes.map((light) => withHolder(light, ambient, stage, eye)), ...ambient];
};
