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

/** Metres, over all. */
export interface VehicleSize {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** A place on the side in metres: north of the middle, and up. */
export type Point = [north: number, up: number];

/** How far the bumpers stand out of the body at either end, metres. */
export const bumperMetres = 0.04;
const archPieces = 12;
/** Room between a tyre and the arch over it, metres. */
export const archMetres = 0.06;

/** Radius of the wheels, metres: what looks right from a low car to a high van, by eye. */
export const wheelRadius = ({ height }: VehicleSize): number => 0.2 + 0.075 * height;

/** How high the lower edge of the body is, metres. */
export const sillUp = (size: VehicleSize): number => wheelRadius(size) * 0.65;

/** Everything about a vehicle's side in metres, nose to the south. */
export const linesOf = (side: VehicleSide, size: VehicleSize) => {
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
