import { finishNamed } from '../../setup/finish-presets.ts';
import type { FinishDraft, PartDraft } from '../kit.ts';
import type { Place } from './frame.ts';
import { vehicleFittings } from './vehicle-fittings.ts';
import { archMetres, linesOf, type Point, type VehicleSide, type VehicleSize, wheelRadius } from './vehicle-side.ts';
import { tyredWheel } from './wheels.ts';

/** Thickness of the body's walls, metres. */
const skinMetres = 0.03;
const wheelWidth = 0.2;

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
    ...vehicleFittings(side, size),
  ];
};

const paints = ['white-paint', 'dark-paint'];
/** Words for the paints of a vehicle, in order. */
export const paintChoices = ['Light', 'Dark'];
/** The finish of one of them, counted from 0. */
export const paintFinish = (choice: number): FinishDraft => finishNamed(paints[choice] as string);
