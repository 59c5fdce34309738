import type { PartDraft } from '../kit.ts';

/** A boat's hull in its own axes: bow to the south, up from the underside of the planking amidships, metres. */
export interface HullShape {
  readonly lengthMetres: number;
  readonly beamMetres: number;
  readonly depthMetres: number;
  /** Planks on each side; 0 = smooth. */
  readonly planks: number;
  /** Whether the stern is a flat board, and not pointed like the bow. */
  readonly transom: boolean;
}

/** The half ellipse of a hull at one place along it. */
export interface Station {
  readonly northMetres: number;
  readonly halfBeamMetres: number;
  readonly sheerMetres: number;
  readonly bottomMetres: number;
}

export type Section = Extract<PartDraft, { kind: 'loft' }>['sections'][number];
type Point = [east: number, up: number];

/** Thickness of the planking, and how far a plank stands out over the next, metres. */
export const plankingMetres = 0.025;
const stepMetres = 0.008;
/** Half of the width at which planks end on a stem, metres. */
const stemHalfMetres = 0.03;

/** Stations lie closer toward the ends, where the skin bends most. */
const stationCount = 25;
const alongAt = (k: number): number =>
  Math.sin(((k / (stationCount - 1)) * 2 - 1) * (Math.PI / 2) * 0.9) / Math.sin((Math.PI / 2) * 0.9);

/** The hull's half ellipse at `along`, from -1 at the bow to 1 at the stern. */
export const stationAt = (hull: HullShape, along: number): Station => {
  const { lengthMetres, beamMetres, depthMetres, transom } = hull;
  const end = Math.abs(along);
  const flat = transom && along > 0;
  const share = 1 - (flat ? 0.4 : 1) * end ** 2.2;
  return {
    northMetres: (along * lengthMetres) / 2,
    halfBeamMetres: Math.max((share * beamMetres) / 2, stemHalfMetres),
    sheerMetres: depthMetres * (1 + (along > 0 ? 0.2 : 0.34) * end ** 2.2),
    bottomMetres: depthMetres * (flat ? 0.16 * end ** 3 : 0.5 * end ** 6),
  };
};

export const hullStations = (hull: HullShape, endMetres: number): Station[] => {
  const share = 1 - (2 * endMetres) / hull.lengthMetres;
  return Array.from({ length: stationCount }, (_, k) => stationAt(hull, alongAt(k) * share));
};

/** A point of a half ellipse, from the port gunwale at 0 over the keel at 90° to the other gunwale, set in along its normal. */
const onEllipse = (
  { sheerMetres, bottomMetres, halfBeamMetres }: Station,
  radians: number,
  inMetres: number,
): Point => {
  const deep = sheerMetres - bottomMetres;
  const [c, s] = [Math.cos(radians), Math.sin(radians)];
  const [across, down] = [c * deep, s * halfBeamMetres];
  const inward = inMetres / Math.hypot(across, down);
  return [-c * halfBeamMetres + across * inward, sheerMetres - s * deep + down * inward];
};

/** How far each point of a side is set in, from gunwale to keel: each plank's lower edge stands out over the next. */
const stepsOfSide = (planks: number, step: number): (readonly [share: number, inMetres: number])[] => {
  const count = Math.max(planks, 1);
  const pieces = Math.ceil(12 / count);
  return Array.from({ length: count }, (_, plank) => {
    const top = plank === 0 ? 0 : step;
    return Array.from({ length: pieces + 1 }, (__, k) => {
      const at = k / pieces;
      return [(plank + at) / count, top * (1 - at)] as const;
    });
  }).flat();
};

/** The inside of the planking: a half ellipse again. */
export const insideOf = (station: Station): Station => ({
  ...station,
  halfBeamMetres: Math.max(station.halfBeamMetres - plankingMetres, station.halfBeamMetres / 4),
  bottomMetres: station.bottomMetres + plankingMetres,
});

/** Points round the inside of a hull. */
const insidePieces = 20;
export const halfEllipse = (station: Station): Point[] =>
  Array.from({ length: insidePieces + 1 }, (_, k) => onEllipse(station, (Math.PI * k) / insidePieces, 0));

/** A section through the planking: round the outside, then back round the inside. */
export const plankingSection = (station: Station, planks: number): Section => {
  // planks run out flush on the stem
  const step = planks > 0 ? stepMetres * Math.min(station.halfBeamMetres / 0.3, 1) : 0;
  const side = stepsOfSide(planks, step);
  const port = side.map(([share, inward]) => onEllipse(station, (share * Math.PI) / 2, inward));
  const starboard = port
    .slice(0, -1)
    .reverse()
    .map(([east, up]): Point => [-east, up]);
  return {
    northMetres: station.northMetres,
    outline: [...port, ...starboard, ...halfEllipse(insideOf(station)).reverse()],
  };
};

/** A rectangle across the hull. */
export const bar = (
  northMetres: number,
  [west, east]: readonly [number, number],
  [low, high]: readonly [number, number],
): Section => ({
  northMetres,
  outline: [
    [west, low],
    [east, low],
    [east, high],
    [west, high],
  ],
});
