import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { between } from './shared/between.ts';
import { type BrokenTop, brokenTop, heightAt } from './shared/broken-top.ts';
import { placeTogether } from './shared/frame.ts';
import {
  type Build,
  biteMetres,
  block,
  bodyPart,
  type Hole,
  looseParts,
  type RuinedWall,
  standOutMetres,
  stoneParts,
} from './shared/ruined-wall.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { pick, tonesOf } from './shared/tones.ts';

const lancet = { wide: 0.5, high: 2 };
const door = { wide: 1.2, high: 2.4 };

/** Stones that came down, inside and out, lying in the ground a little. */
const fallenParts = (length: number, width: number, broken: number, { tones, random, thick }: Build): PartDraft[] =>
  Array.from({ length: Math.round(6 + 18 * broken) }, (_, k) => {
    const inside = k % 3 === 0;
    const size = between(random, 0.3, 0.8);
    const along = between(random, -0.5, 0.5) * (inside ? length - 2 * thick - 1 : length + 1.5);
    const beyond = inside
      ? between(random, -0.5, 0.5) * Math.max(width - 2 * thick - 1, 0.1)
      : (k % 3 === 1 ? -1 : 1) * (width / 2 + size * 0.7 + 1.6 * random() ** 2);
    return block(size, [along, beyond, -0.12 * size], pick(random, tones), random, 16);
  });

export const chapel: Kit = {
  name: 'roofless-chapel',
  label: 'Roofless chapel',
  says: 'A ruin of four walls: doorway at the left, lancets in the front and in the right gable.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 6, max: 30, initial: 10, step: 0.5 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 4, max: 12, initial: 6, step: 0.5 },
    { key: 'wallMetres', label: 'Height of the walls', unit: 'm', min: 3.25, max: 8, initial: 4, step: 0.25 },
    { key: 'gableMetres', label: 'Top of the right gable', unit: 'm', min: 4, max: 16, initial: 7.5, step: 0.25 },
    { key: 'thickMetres', label: 'Thickness of the walls', unit: 'm', min: 0.4, max: 1.2, initial: 0.7, step: 0.05 },
    { key: 'lancets', label: 'Lancets in the front', unit: '', min: 0, max: 4, initial: 2, step: 1 },
    { key: 'broken', label: 'Broken, 0 to 1', unit: '', min: 0, max: 1, initial: 0.5, step: 0.05 },
  ],
  make: (
    {
      lengthMetres = 10,
      widthMetres = 6,
      wallMetres = 4,
      gableMetres = 7.5,
      thickMetres = 0.7,
      lancets = 2,
      broken = 0.5,
    },
    random,
  ) => {
    const stone = finishNamed('sandstone');
    const build: Build = { thick: thickMetres, tones: tonesOf(stone, 0.14), random };
    const gable = Math.max(gableMetres, wallMetres + 0.5);
    const inner = lengthMetres - 2 * thickMetres;
    const count = Math.min(Math.round(lancets), Math.floor(inner / 1.2));
    const windows = Array.from({ length: count }, (_, k): Hole => {
      const across = ((k + 0.5) / count - 0.5) * inner;
      return { across, sill: 0.9, ...lancet };
    });
    const slope = (across: number) => wallMetres + (gable - wallMetres) * (1 - (2 * Math.abs(across)) / widthMetres);
    const even = () => wallMetres;
    /** Tops stay whole over openings. */
    const keep = (holes: readonly Hole[]) => (across: number) =>
      Math.max(0.6, ...holes.map((h) => (Math.abs(across - h.across) < h.wide / 2 + 0.5 ? h.sill + h.high + 0.25 : 0)));
    const body = inner + 2 * biteMetres;
    const eastLancet: Hole = { across: 0, sill: 1.1, ...lancet };
    const westDoor: Hole = { across: 0, sill: 0, ...door };
    const ends = widthMetres - 2 * standOutMetres;
    const gableTop = (holes: readonly Hole[], lost: number, reaches: boolean) =>
      brokenTop({ length: ends, whole: slope, least: keep(holes), broken: lost, reaches }, random);
    const [west, east] = [gableTop([westDoor], broken, false), gableTop([eastLancet], broken * 0.12, true)];
    const upOf = (top: BrokenTop) => [heightAt(top, -ends), heightAt(top, ends)] as const;
    // a gable seen from outside has the front at its right hand in the west, at its left in the east
    const [westUp, eastUp] = [upOf(west), upOf(east)];
    const long = { length: lengthMetres, bodyLength: body, out: widthMetres / 2, setBack: 0.002, doors: [] };
    const short = { length: widthMetres, bodyLength: ends, out: lengthMetres / 2, setBack: 0 };
    const evenTop = (holes: readonly Hole[]) =>
      brokenTop({ length: body, whole: even, least: keep(holes), broken, reaches: true }, random);
    const walls: readonly RuinedWall[] = [
      {
        ...long,
        name: 'Front wall',
        turnDegrees: 0,
        top: evenTop(windows),
        cornersUp: [westUp[1], eastUp[0]],
        windows,
        stonesShare: 0.42,
      },
      {
        ...short,
        name: 'West gable',
        turnDegrees: 90,
        top: west,
        cornersUp: westUp,
        doors: [westDoor],
        windows: [],
        stonesShare: 0.3,
      },
      {
        ...long,
        name: 'Back wall',
        turnDegrees: 180,
        top: evenTop([]),
        cornersUp: [eastUp[1], westUp[0]],
        windows: [],
        stonesShare: 0.12,
      },
      {
        ...short,
        name: 'East gable',
        turnDegrees: -90,
        top: east,
        cornersUp: eastUp,
        doors: [],
        windows: [eastLancet],
        stonesShare: 0.2,
      },
    ];
    const parts = walls.flatMap((side) =>
      placeTogether(
        [bodyPart(side, build), ...stoneParts(side, build), ...looseParts(side, build, Math.round(4 * broken))],
        {
          turnDegrees: side.turnDegrees,
        },
      ),
    );
    return { finish: stone, parts: tidyParts([...parts, ...fallenParts(lengthMetres, widthMetres, broken, build)]) };
  },
};
