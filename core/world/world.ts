import { type CameraView, cameraView, openLens } from '../camera/camera-view.ts';
import type { Exposure } from '../camera/exposure.ts';
import { whiteBalanceMatrix } from '../colour/adaptation.ts';
import type { Camera, Frame, Scheme, Setup } from '../setup/schema/setup.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { exactFNumber, exactIso } from '../units/third-stops.ts';
import { worldFromDocument } from './axes.ts';
import type { Development } from './development.ts';
import { lightsOf } from './frame-lights.ts';
import type { WorldLight } from './source.ts';
import { type Stage, stageOf } from './stage.ts';

export { type LampPlace, type PathPoint, placeAtShare, placeAtTime, placeOnPath, poseAt } from './lamp-place.ts';
export { type Holder, meanMoonRadiusRadians, type Source, type WorldLight } from './source.ts';

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

const viewOf = (camera: Camera): CameraView =>
  cameraView({
    position: worldFromDocument(camera.position),
    aim: worldFromDocument(camera.aim),
    rollRadians: radiansFromDegrees(camera.rollDegrees),
    sensorWidthMm: camera.sensor.widthMm,
    sensorHeightMm: camera.sensor.heightMm,
    focalLengthMm: camera.focalLengthMm,
  });

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
    lights: lightsOf(frame, camera, setup, stageOf(setup)),
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
