import { finishNamed } from '../../setup/finish-presets.ts';
import type { FinishDraft, PartDraft } from '../kit.ts';
import type { Place } from './frame.ts';
import { tyredWheel } from './wheels.ts';

/** A place on the side of a vehicle: shares of its length from the nose, and of its height. */
export type SidePoint = readonly [alongShare: number, upShare: number];

/** The side of a vehicle, seen from outside with the nose at 0. */
export interface VehicleSide {
  /** From the nose over the bonnet to the lower edge of the windscreen. */
  readonly front: readonly SidePoint[];
  /** From the upper edge of the windscreen to that of the rear window; without one, on to the tail. */
  readonly roof: readonly SidePoint[];
  /** From the lower edge of the rear window down the tail; null = no rear window. */
  readonly tail: readonly SidePoint[] | null;
  /** Side windows. */
  readonly windows: readonly (readonly SidePoint[])[];
  /** Where the axles are. */
  readonly axles: readonly [front: number, rear: number];
  /** Seats: how far along, and how deep they are as a share of the length. */
  readonly seats: readonly number[];
}

export interface VehicleSize {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

type Point = [north: number, up: number];

const skinMetres = 0.03;
const bumperMetres = 0.04;
const archPieces = 12;
/** Room between a tyre and the arch over it, metres. */
const archMetres = 0.06;
const wheelWidth = 0.2;

/** Radius of the wheels: what looks right from a low car to a high van, by eye. */
export const wheelRadius = ({ height }: VehicleSize): number => 0.2 + 0.075 * height;

const sillUp = (size: VehicleSize): number => wheelRadius(size) * 0.65;

/** The line set in, to its right. */
const inset = (line: readonly Point[], metres: number): Point[] =>
  line.map(([north, up], i) => {
    const normals = [i - 1, i].flatMap((k): Point[] => {
      const [a, b] = [line[k], line[k + 1]];
      if (!a || !b) return [];
      const apart = Math.hypot(b[0] - a[0], b[1] - a[1]);
      return [[(b[1] - a[1]) / apart, -(b[0] - a[0]) / apart]];
    });
    const [first, second] = [normals[0] as Point, normals.at(-1) as Point];
    const sum: Point = [first[0] + second[0], first[1] + second[1]];
    const share = (2 * metres) / (sum[0] ** 2 + sum[1] ** 2);
    return [north + sum[0] * share, up + sum[1] * share];
  });

/** Everything about a vehicle's side in metres, nose to the south. */
const linesOf = (side: VehicleSide, size: VehicleSize) => {
  const inner = size.length - 2 * bumperMetres;
  const at = ([along, up]: SidePoint): Point => [(along - 0.5) * inner, up * size.height];
  const radius = wheelRadius(size);
  const sill = sillUp(size);
  /** Over a wheel, from the rear to the front. */
  const arch = (along: number): Point[] => {
    const [middle] = at([along, 0]);
    const open = radius + archMetres;
    const from = Math.asin((sill - radius) / open);
    return Array.from({ length: archPieces + 1 }, (_, k): Point => {
      const turn = from + ((Math.PI - 2 * from) * k) / archPieces;
      return [middle + open * Math.cos(turn), radius + open * Math.sin(turn)];
    });
  };
  const [frontAxle, rearAxle] = side.axles;
  const corners: [Point, Point] = [
    [inner / 2, sill],
    [-inner / 2, sill],
  ];
  const bottom = [corners[0], ...arch(rearAxle), ...arch(frontAxle), corners[1]];
  const [front, roof] = [side.front.map(at), side.roof.map(at)];
  const tail = side.tail?.map(at) ?? null;
  // once round, clockwise with the nose on the left
  const outline = [...front, ...roof, ...(tail ?? []), ...bottom];
  const shells = tail ? [roof, [...tail, ...bottom, ...front]] : [[...roof, ...bottom, ...front]];
  return { outline, shells, windows: side.windows.map((pane) => pane.map(at)), at };
};

/** An outline [north, up] drawn across from one place to another. */
const across = (name: string, outline: readonly Point[], [west, east]: readonly [number, number]) => ({
  kind: 'prism' as const,
  name,
  position: [west, 0, 0] as Place,
  // its own east is the north, its own north up
  tiltDegrees: -90,
  rollDegrees: 90,
  outline: [...outline],
  heightMetres: east - west,
  creaseDegrees: 24,
});

const fittings = (side: VehicleSide, { length, width, height }: VehicleSize, sill: number): PartDraft[] => {
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

/** The parts of a vehicle: a hollow body of thin walls with open windows, wheels, bumpers, lights and seats. */
export const vehicleParts = (side: VehicleSide, size: VehicleSize): PartDraft[] => {
  const { outline, shells, windows, at } = linesOf(side, size);
  const half = size.width / 2;
  const radius = wheelRadius(size);
  // the walls across end inside those at the sides, so that no light gets out where they meet
  const between = half - skinMetres / 2;
  const glassless = windows.map((pane) => [...pane]);
  return [
    { ...across('West side', outline, [-half, -half + skinMetres]), holes: glassless },
    { ...across('East side', outline, [half - skinMetres, half]), holes: glassless },
    ...shells.map((line, k) =>
      across(
        k === 0 && shells.length > 1 ? 'Roof' : 'Shell',
        [...line, ...inset(line, skinMetres).reverse()],
        [-between, between],
      ),
    ),
    ...side.axles.flatMap((along) =>
      [-1, 1].flatMap((east) =>
        tyredWheel([east * (half - 0.015 - wheelWidth / 2), at([along, 0])[0], radius], radius, wheelWidth, east),
      ),
    ),
    ...side.axles.map(
      (along): PartDraft => ({
        kind: 'cylinder',
        name: 'Axle',
        position: [-half + 0.1, at([along, 0])[0], radius],
        rollDegrees: 90,
        radiusMetres: 0.04,
        heightMetres: size.width - 0.2,
        sides: 12,
      }),
    ),
    // what the body stands on
    ...side.axles.flatMap((along) =>
      [-1, 1].map((east): PartDraft => {
        const place: Place = [east * (half - 0.4), at([along, 0])[0], radius];
        return {
          kind: 'cylinder',
          name: 'Spring',
          position: place,
          radiusMetres: 0.05,
          heightMetres: radius + archMetres + 0.01,
          sides: 12,
        };
      }),
    ),
    ...fittings(side, size, sillUp(size)),
  ];
};

const paints = ['white-paint', 'dark-paint'];
export const paintChoices = ['Light', 'Dark'];
export const paintFinish = (choice: number): FinishDraft => finishNamed(paints[choice] as string);
