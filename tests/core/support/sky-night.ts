import type { Caution } from '../../../core/cautions/caution.ts';
import { reportScheme, type SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { framesOf } from './blends.ts';
import { cameraToward } from './hours.ts';

/** What a test wants to say of one frame without lamps. */
export interface SkyNight {
  readonly place: object;
  readonly camera?: object;
  readonly frame?: object;
  readonly subjects?: readonly object[];
}

/** The report of one frame under the sky of a place. */
export const reportOf = ({
  place,
  camera = cameraToward(0, 20),
  frame = {},
  subjects = [],
}: SkyNight): SchemeReport => {
  const setup = framesOf([{ seconds: 15, aperture: 2.8, iso: 3200, ...frame }], { place, camera, subjects });
  return reportScheme(setup, setup.schemes[0] as Scheme);
};

/** The caution of a code, if it is there. */
export const toldOf = ({ cautions }: SchemeReport, code: string): Caution | undefined =>
  cautions.find((caution) => caution.code === code);

/** A wide wall 10 m off at a bearing, as high as reaches a height over the eye, degrees. */
export const wallAt = (bearingDegrees: number, altitudeDegrees: number) => {
  const b = (bearingDegrees * Math.PI) / 180;
  return {
    id: 'wall',
    name: 'Wall',
    position: [10 * Math.sin(b), 10 * Math.cos(b), 0],
    turnDegrees: bearingDegrees,
    parts: [
      {
        kind: 'box',
        widthMetres: 60,
        depthMetres: 0.01,
        heightMetres: 1.5 + 10 * Math.tan((altitudeDegrees * Math.PI) / 180),
      },
    ],
  };
};
