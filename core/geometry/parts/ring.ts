import { fewestRoundSides } from '../../units/round-sides.ts';
import { heldToFaces } from '../held-to-faces.ts';
import { type Mesh, MeshBuilder } from '../mesh.ts';
import { type Rough, roughCreaseRadians, roughened } from '../roughen.ts';
import { meshOfSkin, SkinBuilder } from '../skin.ts';
import { add, normalize, scale, sub, type Vec3 } from '../vec.ts';

/** A tube along part of a circle that stands upright in the plane of x and y. */
export interface RingShape {
  /** From the circle's centre to the middle of the tube. */
  readonly radiusMetres: number;
  /** Radius of the tube at its ends. */
  readonly tubeRadiusMetres: number;
  /** Radius of the tube at its top over that at its ends. */
  readonly topShare: number;
  /** How much of the circle there is, evenly to both sides of the top; 2 pi = a whole ring. */
  readonly arcRadians: number;
  /** Sides of the tube. */
  readonly sides: number;
}

/** Pieces along the tube, and round it. */
export type RingDivisions = readonly [along: number, around: number];

/** Where the middle of the tube is, and how it lies there. */
interface Station {
  readonly middle: Vec3;
  /** Away from the centre of the circle. */
  readonly away: Vec3;
  /** Along the tube, from its west to its east end. */
  readonly onward: Vec3;
  readonly tubeMetres: number;
  /** By how much the tube widens a metre onward. */
  readonly widening: number;
}

const isWhole = ({ arcRadians }: RingShape): boolean => arcRadians >= 2 * Math.PI;

/** Stations from the west end to the east end. The ends of an arch lie at height 0; a whole ring stands on the ground. */
const stationsOf = (shape: RingShape, along: number): Station[] => {
  const { radiusMetres, tubeRadiusMetres, topShare, arcRadians } = shape;
  const centre = isWhole(shape) ? radiusMetres + tubeRadiusMetres : -radiusMetres * Math.cos(arcRadians / 2);
  return Array.from({ length: along + 1 }, (_, k) => {
    // both ends of a whole ring are the same place, to the last digit
    const share = isWhole(shape) && k === along ? -1 : (2 * k) / along - 1;
    const turn = (share * arcRadians) / 2;
    const away: Vec3 = [Math.sin(turn), Math.cos(turn), 0];
    return {
      middle: add([0, centre, 0], scale(away, radiusMetres)),
      away,
      onward: [Math.cos(turn), -Math.sin(turn), 0],
      tubeMetres: tubeRadiusMetres * (1 + (topShare - 1) * 0.5 * (1 + Math.cos(Math.PI * share))),
      widening:
        (tubeRadiusMetres * (1 - topShare) * 0.5 * Math.sin(Math.PI * share) * Math.PI) /
        (arcRadians / 2) /
        radiusMetres,
    };
  });
};

const spoke = ({ away }: Station, turn: number): Vec3 => add(scale(away, Math.cos(turn)), [0, 0, Math.sin(turn)]);

/** The surface's own normal: a tube that widens onward leans back, less where its outside is longer. */
const normalAt = (station: Station, turn: number, { radiusMetres }: RingShape): Vec3 => {
  const longer = 1 + (station.tubeMetres * Math.cos(turn)) / radiusMetres;
  return normalize(sub(spoke(station, turn), scale(station.onward, station.widening / longer)));
};

/** An even arch or ring: its own normals, along the tube always and round it unless sides are few; flat ends. */
export const ringMesh = (shape: RingShape, along: number): Mesh => {
  const { sides } = shape;
  const builder = new MeshBuilder();
  const stations = stationsOf(shape, along);
  const turnOf = (s: number) => (2 * Math.PI * (s % sides)) / sides;
  const point = (station: Station, s: number) =>
    add(station.middle, scale(spoke(station, turnOf(s)), station.tubeMetres));
  const isFlat = sides < fewestRoundSides;
  const normal = (station: Station, s: number, side: number) =>
    normalAt(station, isFlat ? (2 * Math.PI * (side + 0.5)) / sides : turnOf(s), shape);
  stations.slice(1).forEach((east, k) => {
    const west = stations[k] as Station;
    for (let s = 0; s < sides; s++)
      builder.quad(point(west, s), point(west, s + 1), point(east, s + 1), point(east, s), [
        normal(west, s, s),
        normal(west, s + 1, s),
        normal(east, s + 1, s),
        normal(east, s, s),
      ]);
  });
  if (!isWhole(shape)) {
    const [west, east] = [stations[0] as Station, stations.at(-1) as Station];
    for (let s = 0; s < sides; s++) {
      builder.triangle(west.middle, point(west, s + 1), point(west, s));
      builder.triangle(east.middle, point(east, s), point(east, s + 1));
    }
  }
  return heldToFaces(builder.build());
};

/** An uneven arch or ring. */
export const roughRingMesh = (shape: RingShape, rough: Rough, [along, around]: RingDivisions): Mesh => {
  const builder = new SkinBuilder();
  const tubes: number[] = [];
  const stations = stationsOf(shape, along).slice(0, isWhole(shape) ? -1 : undefined);
  const corner = (p: Vec3, tube: number): number => {
    tubes.push(tube);
    return builder.corner(p);
  };
  const polygon = shape.sides < fewestRoundSides ? shape.sides : around;
  const perSide = around / polygon;
  const rings = stations.map((station) => {
    const flat = Array.from({ length: polygon }, (_, s) =>
      add(station.middle, scale(spoke(station, (2 * Math.PI * s) / polygon), station.tubeMetres)),
    );
    return Array.from({ length: around }, (_, k) => {
      const [a, b] = [flat[Math.floor(k / perSide)], flat[(Math.floor(k / perSide) + 1) % polygon]] as [Vec3, Vec3];
      const t = (k % perSide) / perSide;
      return corner(add(scale(a, 1 - t), scale(b, t)), station.tubeMetres);
    });
  });
  const at = (ring: number, k: number) => rings[ring % rings.length]?.[k % around] as number;
  for (let r = 0; r < along; r++)
    for (let k = 0; k < around; k++) builder.quad(at(r, k), at(r, k + 1), at(r + 1, k + 1), at(r + 1, k));
  if (!isWhole(shape)) {
    const [west, east] = [stations[0] as Station, stations.at(-1) as Station];
    const [westMiddle, eastMiddle] = [corner(west.middle, west.tubeMetres), corner(east.middle, east.tubeMetres)];
    for (let k = 0; k < around; k++) {
      builder.triangle(westMiddle, at(0, k + 1), at(0, k));
      builder.triangle(eastMiddle, at(along, k), at(along, k + 1));
    }
  }
  const cell = Math.max(
    (shape.arcRadians * shape.radiusMetres) / along,
    (2 * Math.PI * shape.tubeRadiusMetres * Math.max(shape.topShare, 1)) / around,
  );
  const skin = roughened(builder.build(), rough, cell, (c) => 0.6 * (tubes[c] as number), true);
  return meshOfSkin(skin, polygon === around ? roughCreaseRadians : Math.PI / 4);
};
