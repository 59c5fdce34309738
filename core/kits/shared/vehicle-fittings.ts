import { finishNamed } from '../../setup/finish-presets.ts';
import type { PartDraft } from '../kit.ts';
import { bumperMetres, type SidePoint, sillUp, type VehicleSide, type VehicleSize } from './vehicle-side.ts';

/** Bumpers, lights and seats of a vehicle whose nose is to the south. */
export const vehicleFittings = (side: VehicleSide, size: VehicleSize): PartDraft[] => {
  const { length, width, height } = size;
  const sill = sillUp(size);
  const [nose, trim] = [length / 2, { finish: { reflectance: 0.05, gloss: 0.3 } }];
  const lightUp = Math.max((side.front[0] as SidePoint)[1] * height, sill + 0.25);
  return [
    ...[-1, 1].map(
      (end): PartDraft => ({
        kind: 'box',
        name: end < 0 ? 'Front bumper' : 'Rear bumper',
        position: [0, end * (nose - 0.05), sill + 0.03],
        widthMetres: width - 0.04,
        depthMetres: 0.1,
        heightMetres: 0.15,
        ...trim,
      }),
    ),
    ...[-1, 1].flatMap((east): PartDraft[] => [
      {
        kind: 'cylinder',
        name: 'Headlight',
        position: [east * (width / 2 - 0.24), -nose + bumperMetres + 0.02, lightUp],
        tiltDegrees: 90,
        // stands out of the nose to the south
        turnDegrees: 180,
        radiusMetres: 0.085,
        heightMetres: 0.03,
        sides: 20,
        finish: finishNamed('bare-metal'),
      },
      {
        kind: 'box',
        name: 'Rear light',
        position: [east * (width / 2 - 0.16), nose - bumperMetres, sill + 0.24],
        widthMetres: 0.18,
        depthMetres: 0.03,
        heightMetres: 0.11,
        finish: { reflectance: [0.3, 0.03, 0.02], gloss: 0.5 },
      },
    ]),
    ...side.seats.flatMap((along, row): PartDraft[] => {
      const north = (along - 0.5) * length;
      const cloth = { finish: { reflectance: 0.08 } };
      const wide = row === 0 ? 0.5 : Math.max(width - 0.3, 0.5);
      const easts = row === 0 ? [-1, 1].map((e) => e * width * 0.22) : [0];
      return easts.flatMap((east): PartDraft[] => [
        {
          kind: 'box',
          name: 'Seat',
          position: [east, north, sill],
          widthMetres: Math.min(wide, width * 0.8),
          depthMetres: 0.5,
          heightMetres: height * 0.22,
          ...cloth,
        },
        {
          kind: 'box',
          name: 'Seat back',
          position: [east, north + 0.22, sill + height * 0.15],
          tiltDegrees: 12,
          widthMetres: Math.min(wide, width * 0.8),
          depthMetres: 0.12,
          heightMetres: height * 0.38,
          ...cloth,
        },
      ]);
    }),
  ];
};
