import type { PartDraft } from '../kit.ts';
import type { Place } from './frame.ts';
import {
  bar,
  type HullShape,
  halfEllipse,
  hullStations,
  insideOf,
  plankingMetres,
  plankingSection,
  type Section,
  type Station,
  stationAt,
} from './hull.ts';

/** How far planking ends before the tips of the stems, metres. */
const stemMetres = 0.05;
const keel = { halfMetres: 0.035, deepMetres: 0.08 };
const ribCount = 7;

type BoxDraft = Extract<PartDraft, { kind: 'box' }>;

const loft = (name: string, sections: readonly Section[]): PartDraft => ({
  kind: 'loft',
  name,
  sections: [...sections],
});

/** Rails on the edge of the planking, in from its outside so that the boat is no wider. */
const rails = (stations: readonly Station[]): PartDraft[] =>
  [-1, 1].map((side) => {
    const sections = stations.map(({ northMetres, halfBeamMetres, sheerMetres }) => {
      const across = [Math.max(halfBeamMetres - 0.07, 0.002) * side, (halfBeamMetres - 0.004) * side] as const;
      return bar(northMetres, side < 0 ? [across[1], across[0]] : across, [sheerMetres - 0.03, sheerMetres + 0.025]);
    });
    return loft(side < 0 ? 'West rail' : 'East rail', sections);
  });

const keelParts = (hull: HullShape, stations: readonly Station[]): PartDraft[] => {
  const half = hull.lengthMetres / 2;
  const along = stations.map(({ northMetres, bottomMetres }) =>
    bar(northMetres, [-keel.halfMetres, keel.halfMetres], [bottomMetres - keel.deepMetres, bottomMetres + 0.015]),
  );
  const stem = (name: string, station: Station, north: number): PartDraft => {
    const low = station.bottomMetres - keel.deepMetres;
    return {
      kind: 'box',
      name,
      position: [0, north, low],
      widthMetres: 2 * keel.halfMetres,
      depthMetres: 0.12,
      heightMetres: station.sheerMetres + 0.1 - low,
    };
  };
  const [first, last] = [stations[0] as Station, stations.at(-1) as Station];
  const board = [half - stemMetres - 0.01, half].map((northMetres) => ({
    northMetres,
    outline: [...halfEllipse({ ...last, halfBeamMetres: last.halfBeamMetres - 0.002 })],
  }));
  return [
    loft('Keel', along),
    stem('Stem', first, 0.06 - half),
    hull.transom ? loft('Stern board', board) : stem('Stern post', last, half - 0.06),
  ];
};

/** Half of the width inside the planking at a height. */
const roomAt = (station: Station, upMetres: number): number => {
  const { halfBeamMetres, sheerMetres, bottomMetres } = insideOf(station);
  const down = Math.min(Math.max((sheerMetres - upMetres) / (sheerMetres - bottomMetres), 0), 1);
  return halfBeamMetres * Math.sqrt(1 - down * down);
};

const thwart = (hull: HullShape, along: number): PartDraft => {
  const [deep, thick] = [Math.min(0.26, hull.lengthMetres * 0.05), 0.035];
  const { northMetres, sheerMetres, bottomMetres } = stationAt(hull, along);
  const up = sheerMetres - 0.3 * (sheerMetres - bottomMetres);
  // its ends stand in the planking, and nowhere through it
  const half = Math.min(
    ...[-1, 1].map((side) => roomAt(stationAt(hull, along + (side * deep) / hull.lengthMetres), up)),
  );
  return {
    kind: 'box',
    name: 'Thwart',
    position: [0, northMetres, up],
    widthMetres: 2 * (half + plankingMetres / 3),
    depthMetres: deep,
    heightMetres: thick,
  };
};

/** A rib inside the planking. */
const rib = (hull: HullShape, k: number): PartDraft => {
  const along = (k - (ribCount - 1) / 2) / ((ribCount + 1) / 2);
  const halfWide = 0.02;
  const sections = [-1, 1].map((side): Section => {
    const inside = insideOf(stationAt(hull, along + (side * halfWide * 2) / hull.lengthMetres));
    const ring = (inMetres: number) =>
      halfEllipse({
        ...inside,
        sheerMetres: inside.sheerMetres - 0.01,
        halfBeamMetres: inside.halfBeamMetres - inMetres,
        bottomMetres: inside.bottomMetres + inMetres,
      });
    return {
      northMetres: stationAt(hull, along).northMetres + side * halfWide,
      outline: [...ring(-0.006), ...ring(0.03).reverse()],
    };
  });
  return loft('Rib', sections);
};

/** The timbers of a boat: planking, keel, stems, rails, ribs and thwarts. */
interface HullParts {
  readonly parts: readonly PartDraft[];
  /** Places between which all of them lie, [east, north, up], metres. */
  readonly extremes: readonly Place[];
}

/** Everything that a boat is built of, in the axes of its hull. */
export const hullParts = (hull: HullShape): HullParts => {
  const stations = hullStations(hull, stemMetres);
  const sections = stations.map((station) => plankingSection(station, hull.planks));
  const keelAndStems = keelParts(hull, stations);
  const parts = [
    loft('Planking', sections),
    ...keelAndStems,
    ...rails(stations),
    ...Array.from({ length: ribCount }, (_, k) => rib(hull, k)),
    ...[-0.42, 0.08, 0.5].map((along) => thwart(hull, along)),
  ];
  const extremes = parts.flatMap((part): Place[] => {
    if (part.kind === 'loft')
      return part.sections.flatMap(({ northMetres, outline }) =>
        outline.map(([east, up]): Place => [east, northMetres, up]),
      );
    const { position, widthMetres, heightMetres } = part as BoxDraft;
    const [, north, low] = position as Place;
    return [low, low + heightMetres].flatMap((up) =>
      [-1, 1].map((side): Place => [(side * widthMetres) / 2, north, up]),
    );
  });
  return { parts, extremes };
};
