import { type CameraView, cameraView, openLens } from '../camera/camera-view.ts';
import type { Exposure } from '../camera/exposure.ts';
import { whiteBalanceMatrix } from '../colour/adaptation.ts';
import { lightThroughGels } from '../colour/gel.ts';
import type { Triple } from '../colour/matrix.ts';
import { whiteLinearSrgb } from '../colour/white-locus.ts';
import { mix, type Vec3 } from '../geometry/vec.ts';
import { type Emitter, type Pose, poseToward } from '../photometry/emitter.ts';
import type { Camera, Frame, Pass, Scheme, Setup } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { ratioFromStops } from '../units/stops.ts';
import { exactFNumber, exactIso, exactSeconds } from '../units/third-stops.ts';
import { worldFromDocument } from './axes.ts';
import type { Development } from './development.ts';
import { dressedEmitter, emitterOf, fluxOf } from './lamp-light.ts';
import { type Stage, stageOf } from './stage.ts';

/** A moment on a pass's way. */
export interface PathPoint {
  readonly seconds: number;
  readonly position: Vec3;
  readonly aim: Vec3;
}

/** Where light comes from, at unit strength: one lumen of a lamp, one lux of moon or sky. A source makes one layer. */
export type Source =
  | {
      readonly kind: 'lamp';
      readonly emitter: Emitter;
      readonly path: readonly PathPoint[];
      readonly onOff: readonly [number, number];
    }
  | { readonly kind: 'moon'; readonly toward: Vec3 }
  | { readonly kind: 'sky' };

/** A source in a frame with what it weighs there. */
export interface WorldLight {
  /** Pass id, or "moon" and "sky". */
  readonly id: string;
  readonly source: Source;
  /** Linear RGB, luminance in lumens (lamps) or lux (moon, sky). */
  readonly strength: Triple;
  /** Time that it shines while the shutter is open. */
  readonly seconds: number;
}

export interface WorldFrame {
  readonly id: string;
  /** The camera's view as this frame sees it: through the open lens where the focus blur is drawn. */
  readonly view: CameraView;
  readonly exposure: Exposure;
  readonly development: Development;
  /** Passes in order, then moon and sky. */
  readonly lights: readonly WorldLight[];
}

/** A setup under one scheme, in core units and world axes: all that tracing and readings need. */
export interface World {
  readonly stage: Stage;
  /** Through a pinhole; readings are taken with it. */
  readonly view: CameraView;
  /** How many times light is followed from surface to surface. */
  readonly bounces: 0 | 1 | 2;
  /** Width over height of the sensor. */
  readonly aspect: number;
  readonly frames: readonly WorldFrame[];
}

/** Angular radius of the moon: half of 0.518 degrees (checkvalues.md 8h). */
export const moonRadiusRadians = radiansFromDegrees(0.518 / 2);

const viewOf = (camera: Camera): CameraView =>
  cameraView({
    position: worldFromDocument(camera.position),
    aim: worldFromDocument(camera.aim),
    rollRadians: radiansFromDegrees(camera.rollDegrees),
    sensorWidthMm: camera.sensor.widthMm,
    sensorHeightMm: camera.sensor.heightMm,
    focalLengthMm: camera.focalLengthMm,
  });

const scaled = (v: Triple, s: number): Triple => [v[0] * s, v[1] * s, v[2] * s];
const colourOf = (kelvin: number): Triple => whiteLinearSrgb(kelvin).map((v) => Math.max(v, 0)) as unknown as Triple;

const lightOfPass = (pass: Pass, frame: Frame, setup: Setup): WorldLight[] => {
  const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
  if (!lamp) return [];
  const { tint, transmission } = lightThroughGels(lamp.temperatureKelvin, pass.gels);
  const clothShare = ratioFromStops(-(pass.cloth?.stops ?? 0));
  // a lamp that stands still is the same source whenever it is lit, so that a new count traces nothing
  const stands = pass.waypoints.length === 1;
  const path = pass.waypoints.map(({ time, position, aim }) => ({
    seconds: stands ? 0 : time,
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
  }));
  return [
    {
      id: pass.id,
      source: {
        kind: 'lamp',
        emitter: dressedEmitter(emitterOf(lamp, setup.measuredBeams), pass),
        path,
        onOff: stands ? [0, 1] : [pass.on, pass.off],
      },
      strength: scaled(tint, fluxOf(lamp, setup.measuredBeams) * (pass.levelPercent / 100) * transmission * clothShare),
      // a lamp lit as long as the shutter is open is lit for its real time: 16 s behind a marked 15
      seconds: pass.on === 0 && pass.off >= frame.seconds ? exactSeconds(frame.seconds) : pass.off - pass.on,
    },
  ];
};

const ambientOf = ({ place }: Setup, seconds: number): WorldLight[] => {
  const lights: WorldLight[] = [];
  if (place.moonlight) {
    const { bearingDegrees, altitudeDegrees, illuminanceLux, temperatureKelvin } = place.moonlight;
    const [b, a] = [radiansFromDegrees(bearingDegrees), radiansFromDegrees(altitudeDegrees)];
    const toward: Vec3 = [Math.sin(b) * Math.cos(a), Math.sin(a), -Math.cos(b) * Math.cos(a)];
    lights.push({
      id: 'moon',
      source: { kind: 'moon', toward },
      strength: scaled(colourOf(temperatureKelvin), illuminanceLux),
      seconds,
    });
  }
  const { illuminanceLux, temperatureKelvin } = place.skylight;
  lights.push({
    id: 'sky',
    source: { kind: 'sky' },
    strength: scaled(colourOf(temperatureKelvin), illuminanceLux),
    seconds,
  });
  return lights;
};

const developmentOf = ({ drawn, sensor }: Camera, { whiteBalance, iso }: Frame, frame: number): Development => ({
  whiteBalance: whiteBalanceMatrix(whiteBalance.kelvin, whiteBalance.tint),
  response: drawn.response,
  vignetting: drawn.vignetting,
  noise: drawn.noise ? { ...sensor, iso: exactIso(iso), frame } : null,
});

const frameOf = (frame: Frame, place: number, setup: Setup, camera: Camera, pinhole: CameraView): WorldFrame => {
  const fNumber = exactFNumber(frame.aperture);
  return {
    id: frame.id,
    view: camera.drawn.focusBlur ? openLens(pinhole, camera.focalLengthMm, fNumber, frame.focusMetres) : pinhole,
    exposure: { fNumber, iso: exactIso(frame.iso) },
    development: developmentOf(camera, frame, place),
    lights: [
      ...frame.passes.flatMap((pass) => lightOfPass(pass, frame, setup)),
      ...ambientOf(setup, exactSeconds(frame.seconds)),
    ],
  };
};

/** The world of a setup under one of its schemes. The stage is shared between worlds where it can be. */
export const buildWorld = (setup: Setup, scheme: Scheme): World => {
  const camera = scheme.camera ?? setup.camera;
  const view = viewOf(camera);
  return {
    stage: stageOf(setup),
    view,
    bounces: setup.bounces as World['bounces'],
    aspect: camera.sensor.widthMm / camera.sensor.heightMm,
    frames: scheme.frames.map((frame, place) => frameOf(frame, place, setup, camera, view)),
  };
};

/** Position and aim on a path at a time: straight and even between waypoints, at rest before the first and after the last. */
export const placeOnPath = (path: readonly PathPoint[], seconds: number): { position: Vec3; aim: Vec3 } => {
  const after = path.findIndex((point) => point.seconds > seconds);
  if (after <= 0) return (after < 0 ? path.at(-1) : path[0]) as PathPoint;
  const [a, b] = [path[after - 1] as PathPoint, path[after] as PathPoint];
  const t = (seconds - a.seconds) / (b.seconds - a.seconds);
  return { position: mix(a.position, b.position, t), aim: mix(a.aim, b.aim, t) };
};

/**
 * The pose of a lamp source at a share of its on-time, 0 to 1. Where a path's position runs through its aim the lamp
 * points straight down for that moment.
 */
export const poseAt = (source: Extract<Source, { kind: 'lamp' }>, share: number): Pose => {
  const [on, off] = source.onOff;
  const { position, aim } = placeOnPath(source.path, on + (off - on) * share);
  const apart = Math.hypot(aim[0] - position[0], aim[1] - position[1], aim[2] - position[2]) > 1e-9;
  return apart ? poseToward(position, aim) : { position, axis: [0, -1, 0] };
};
