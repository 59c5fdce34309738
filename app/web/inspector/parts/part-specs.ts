import type { Part, PartKind } from '../../../../core/setup/schema/setup.ts';

/** One number of a part: what it is called, its unit on screen, and the range that the document takes. */
export interface PartSpec {
  readonly key: string;
  readonly label: string;
  readonly unit: 'm' | '°' | '%' | '';
  /** On screen; the document holds this over `perUnit`. */
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly digits: number;
  /** On screen over in the document: 100 for a share that is shown in percent. */
  readonly perUnit: number;
  /** What is meant where the document holds null; typing that gives null back. */
  readonly orElse?: (part: Part) => number;
}

/** The numbers of a kind of part: its sizes first, and those that are asked for seldom. */
export interface PartSpecs {
  readonly sizes: readonly PartSpec[];
  readonly more: readonly PartSpec[];
}

const metres = (key: string, label: string, min = 0.001, max = 2000): PartSpec => ({
  key,
  label,
  unit: 'm',
  min,
  max,
  step: 0.1,
  digits: 3,
  perUnit: 1,
});
const degrees = (key: string, label: string, min: number, max: number): PartSpec => ({
  key,
  label,
  unit: '°',
  min,
  max,
  step: 5,
  digits: 2,
  perUnit: 1,
});
const percent = (key: string, label: string, min: number, max: number): PartSpec => ({
  key,
  label,
  unit: '%',
  min,
  max,
  step: 5,
  digits: 1,
  perUnit: 100,
});
const sides: PartSpec = { key: 'sides', label: 'Sides', unit: '', min: 3, max: 128, step: 1, digits: 0, perUnit: 1 };
const crease = degrees('creaseDegrees', 'Smooth under', 0, 180);
const width = metres('widthMetres', 'Width');
const depth = metres('depthMetres', 'Depth');
const height = metres('heightMetres', 'Height');
const radius = metres('radiusMetres', 'Radius');

const numberOf = (part: Part, key: string): number => {
  const value = (part as unknown as Record<string, unknown>)[key];
  return typeof value === 'number' ? value : 0;
};
const topRadius = {
  ...metres('topRadiusMetres', 'Top radius'),
  orElse: (part: Part) => numberOf(part, 'radiusMetres'),
};
const roundHeight = { ...height, orElse: (part: Part) => 2 * numberOf(part, 'radiusMetres') };
const northRadius = {
  ...metres('radiusNorthMetres', 'Radius, north'),
  orElse: (part: Part) => numberOf(part, 'radiusMetres'),
};

export const partSpecs: Readonly<Record<PartKind, PartSpecs>> = {
  box: {
    sizes: [width, depth, height],
    more: [metres('roundMetres', 'Edge radius', 0, 100), percent('topShare', 'Top, of the foot', 5, 200)],
  },
  wedge: { sizes: [width, depth, height], more: [percent('ridgeShare', 'Ridge, from the south', 0, 100)] },
  cylinder: { sizes: [radius, topRadius, height], more: [sides] },
  cone: { sizes: [radius, height], more: [sides] },
  sphere: { sizes: [radius, northRadius, roundHeight], more: [sides] },
  capsule: { sizes: [radius, height], more: [sides] },
  plane: { sizes: [width, depth], more: [] },
  ring: {
    sizes: [radius, metres('tubeRadiusMetres', 'Tube radius'), degrees('arcDegrees', 'Arc', 10, 360)],
    more: [percent('topShare', 'Top, of the ends', 10, 300), sides],
  },
  turned: { sizes: [], more: [sides, crease] },
  prism: { sizes: [height], more: [crease] },
  loft: { sizes: [], more: [crease] },
  wall: {
    sizes: [width, metres('thicknessMetres', 'Thickness'), height, metres('gableMetres', 'Gable over it', 0, 200)],
    more: [],
  },
  scan: {
    sizes: [{ key: 'scale', label: 'Scale', unit: '', min: 0.001, max: 1000, step: 0.1, digits: 3, perUnit: 1 }],
    more: [],
  },
};

/** A number of a part as it is shown. */
export const shownNumber = (part: Part, { key, perUnit, orElse }: PartSpec): number => {
  const value = (part as unknown as Record<string, unknown>)[key];
  return (typeof value === 'number' ? value : (orElse?.(part) ?? 0)) * perUnit;
};

/** The part with one of its numbers typed anew. */
export const withNumber = (part: Part, { key, perUnit, digits, orElse }: PartSpec, shown: number): Part => {
  const typed = digits === 0 ? Math.round(shown) : shown / perUnit;
  const value = orElse && Math.abs(orElse(part) - typed) < 1e-9 ? null : typed;
  return { ...part, [key]: value } as Part;
};
