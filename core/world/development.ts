import type { Response } from '../camera/response.ts';
import type { SensorElectronics } from '../camera/sensors.ts';
import type { Matrix3 } from '../colour/matrix.ts';

/** Noise of a frame's pixels. */
export interface PixelNoise extends SensorElectronics {
  /** Exact speed. */
  readonly iso: number;
  /** Which frame of its scheme this is: every exposure has noise of its own. */
  readonly frame: number;
  /** Pixels across the sensor; a picture of fewer averages them. */
  readonly pixelsWide: number;
}

/** How a frame's light becomes its picture. */
export interface Development {
  readonly whiteBalance: Matrix3;
  readonly response: Response;
  /** Whether the corners darken by the lens's cos^4. */
  readonly vignetting: boolean;
  /** null for a picture without noise. */
  readonly noise: PixelNoise | null;
}
