import { type CameraView, cameraView } from '../../../core/camera/camera-view.ts';
import type { Triple } from '../../../core/colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { pixelSteradians } from '../../../core/trace/on-picture.ts';
import type { Canvas } from '../../../core/trace/splat.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';

/** A place in the south and the evening of the worked scene of sky.md 3. */
export const worked: SkyInput = {
  latitudeRadians: radiansFromDegrees(-33),
  longitudeRadians: radiansFromDegrees(149),
  utcMilliseconds: Date.UTC(2026, 7, 11, 10, 30),
  northRadians: 0,
  zenithMagnitude: 21.8,
  extinctionMagnitudes: 0.172,
  thinCloudDepth: 0,
};

export const size = { width: 1280, height: 853 } as const;
export const emptyCanvas = (): Canvas => ({ ...size, values: new Float32Array(3 * size.width * size.height) });

/** Where a camera looks: bearing and altitude, degrees. */
export interface Look {
  readonly bearing: number;
  readonly altitude: number;
}

/** A full-frame camera with its lens. */
export const viewToward = ({ bearing, altitude }: Look, focalLengthMm: number): CameraView => {
  const [b, a] = [radiansFromDegrees(bearing), radiansFromDegrees(altitude)];
  const aim: Vec3 = [Math.sin(b) * Math.cos(a) * 100, Math.sin(a) * 100, -Math.cos(b) * Math.cos(a) * 100];
  return cameraView({
    position: [0, 0, 0],
    aim,
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm,
  });
};

/**
 * Where a place of the sky falls in the picture of a level camera, by the gnomonic projection (Snyder 1987, Map Projections:
 * A Working Manual, eq. 5-3, 22-4, 22-5), with azimuth for longitude and altitude for latitude. Pixels from the top left.
 */
export const gnomonic = (at: Look, camera: Look, focalLengthMm: number): [x: number, y: number] => {
  const [az, alt, alt0] = [at.bearing - camera.bearing, at.altitude, camera.altitude].map(radiansFromDegrees) as [
    number,
    number,
    number,
  ];
  const cosC = Math.sin(alt0) * Math.sin(alt) + Math.cos(alt0) * Math.cos(alt) * Math.cos(az);
  const x = (Math.cos(alt) * Math.sin(az)) / cosC;
  const y = (Math.cos(alt0) * Math.sin(alt) - Math.sin(alt0) * Math.cos(alt) * Math.cos(az)) / cosC;
  const perMm = size.width / 36;
  return [
    size.width / 2 + x * focalLengthMm * perMm,
    size.height / 2 - y * focalLengthMm * perMm * (size.height / size.width) * 1.5,
  ];
};

const luminance = ({ values }: Canvas, pixel: number): number =>
  luminanceOfLinearSrgb([...values.subarray(3 * pixel, 3 * pixel + 3)] as unknown as Triple);

/** Middle of the light near a place, and the illuminance of all light there: the sum of luminance times solid angle. */
export const lightNear = (canvas: Canvas, view: CameraView, [x0, y0]: readonly [number, number], reach: number) => {
  let [sum, sx, sy, lux] = [0, 0, 0, 0];
  for (let y = Math.max(Math.floor(y0 - reach), 0); y < Math.min(y0 + reach, canvas.height); y++)
    for (let x = Math.max(Math.floor(x0 - reach), 0); x < Math.min(x0 + reach, canvas.width); x++) {
      const value = luminance(canvas, y * canvas.width + x);
      const h = (2 * (x + 0.5)) / canvas.width - 1;
      const v = (2 * (y + 0.5)) / canvas.height - 1;
      const cosine = 1 / Math.hypot(1, h * view.tanHalfWidth, v * view.tanHalfHeight);
      sum += value;
      sx += value * (x + 0.5);
      sy += value * (y + 0.5);
      lux += value * pixelSteradians({ view, ...size }, cosine);
    }
  return { x: sx / sum, y: sy / sum, lux };
};
