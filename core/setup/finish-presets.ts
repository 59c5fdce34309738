import { type FinishSource, finishSources } from './finish-sources.ts';
import type { Finish } from './schema/setup.ts';

/** Kinds of things that presets are grouped by, in the order in which they are shown. */
export const finishGroups = ['Stone', 'Timber and plants', 'Ground', 'Snow and water', 'Made things'] as const;
export type FinishGroup = (typeof finishGroups)[number];

/** A finish by a plain word, with where its reflectance is published. */
export interface FinishPreset {
  readonly id: string;
  readonly group: FinishGroup;
  readonly label: string;
  readonly finish: Finish;
  /** Published range of the share of light that comes back in all, the sheen among it. */
  readonly range: readonly [low: number, high: number];
  /** Where the range is published; "from memory" where the text was not at hand. */
  readonly source: string;
}

type Row = readonly [
  id: string,
  label: string,
  reflectance: Finish['reflectance'],
  rest: Partial<Omit<Finish, 'reflectance'>>,
  range: FinishPreset['range'],
  source: FinishSource,
];

/** Refractive indices: water at 20 °C and ice at 0 °C for yellow light, from memory: CRC Handbook of Chemistry and Physics. */
const waterIndex = 1.333;
const iceIndex = 1.31;

/** How smooth a wet face is. Gloss is our own value everywhere: there is no published table of it in these terms. */
const wet = (gloss: number) => ({ gloss, refractiveIndex: waterIndex });

const rows: Readonly<Record<FinishGroup, readonly Row[]>> = {
  Stone: [
    ['granite', 'Granite', [0.32, 0.3, 0.28], {}, [0.2, 0.35], 'okeStone'],
    ['sandstone', 'Sandstone', [0.36, 0.27, 0.19], {}, [0.2, 0.35], 'okeStone'],
    ['limestone', 'Limestone', [0.46, 0.43, 0.37], {}, [0.4, 0.56], 'solarMarble'],
    ['slate', 'Slate', [0.12, 0.12, 0.13], {}, [0.1, 0.21], 'solarSlate'],
    ['dark-rock', 'Dark rock', [0.09, 0.08, 0.08], {}, [0.05, 0.15], 'basalt'],
    ['wet-stone', 'Wet stone, dark', [0.12, 0.11, 0.1], wet(0.7), [0.1, 0.18], 'wetStone'],
    ['wet-light-stone', 'Wet stone, light', [0.29, 0.26, 0.21], wet(0.7), [0.2, 0.37], 'wetLightStone'],
    ['brick', 'Red brick', [0.35, 0.2, 0.14], {}, [0.2, 0.4], 'okeBrick'],
    ['render', 'Lime render', [0.6, 0.56, 0.49], {}, [0.5, 0.9], 'okeWhite'],
    ['whitewash', 'Whitewash', [0.76, 0.75, 0.72], {}, [0.5, 0.9], 'okeWhite'],
    ['concrete', 'Concrete', [0.31, 0.3, 0.28], {}, [0.25, 0.4], 'concrete'],
  ],
  'Timber and plants': [
    ['new-timber', 'New timber', [0.5, 0.38, 0.24], {}, [0.25, 0.5], 'lightWood'],
    ['weathered-timber', 'Weathered timber', [0.24, 0.21, 0.18], {}, [0.1, 0.35], 'greyWood'],
    ['dark-timber', 'Dark timber', [0.14, 0.1, 0.07], {}, [0.05, 0.15], 'darkWood'],
    ['bark', 'Bark', [0.14, 0.12, 0.09], {}, [0.05, 0.25], 'bark'],
    ['foliage', 'Leaves', [0.08, 0.13, 0.05], {}, [0.05, 0.15], 'leaves'],
    ['dead-leaves', 'Dead leaves', [0.27, 0.18, 0.1], {}, [0.1, 0.3], 'deadLeaves'],
    ['thatch', 'Thatch', [0.2, 0.17, 0.12], {}, [0.15, 0.2], 'okeThatch'],
    ['grass', 'Green grass', [0.09, 0.125, 0.05], {}, [0.06, 0.18], 'lawn'],
    ['dry-grass', 'Dry grass', [0.26, 0.22, 0.13], {}, [0.16, 0.26], 'okeGrass'],
  ],
  Ground: [
    ['soil', 'Dry soil', [0.29, 0.23, 0.17], {}, [0.22, 0.33], 'cookDrySoil'],
    ['wet-soil', 'Wet soil', [0.1, 0.08, 0.06], wet(0.4), [0.06, 0.13], 'cookWetSoil'],
    ['dry-mud', 'Dried mud', [0.34, 0.29, 0.22], {}, [0.22, 0.33], 'cookDrySoil'],
    ['sand', 'Dry sand', [0.42, 0.36, 0.27], {}, [0.2, 0.45], 'okeDesert'],
    ['wet-sand', 'Wet sand', [0.25, 0.215, 0.165], wet(0.75), [0.2, 0.3], 'cookWetSand'],
    ['gravel', 'Gravel', [0.24, 0.23, 0.21], {}, [0.13, 0.35], 'gravel'],
    ['asphalt', 'Asphalt', [0.09, 0.09, 0.09], {}, [0.05, 0.2], 'okeAsphalt'],
    ['wet-asphalt', 'Wet asphalt', [0.045, 0.045, 0.045], wet(0.7), [0.025, 0.1], 'wetAsphalt'],
  ],
  'Snow and water': [
    ['fresh-snow', 'Fresh snow', [0.86, 0.87, 0.88], {}, [0.7, 0.9], 'cookFreshSnow'],
    ['old-snow', 'Old snow', [0.57, 0.57, 0.56], {}, [0.45, 0.6], 'cookOldSnow'],
    ['ice', 'Ice', [0.3, 0.34, 0.37], { gloss: 0.85, refractiveIndex: iceIndex }, [0.2, 0.45], 'okeIce'],
    ['water', 'Still water', [0.02, 0.025, 0.025], wet(1), [0.03, 0.1], 'okeWater'],
  ],
  'Made things': [
    ['white-paint', 'White paint', [0.75, 0.75, 0.74], { gloss: 0.6 }, [0.5, 0.9], 'okeWhite'],
    ['dark-paint', 'Dark paint', [0.06, 0.07, 0.08], { gloss: 0.8 }, [0.02, 0.15], 'okeBlack'],
    ['car-paint', 'Car paint, dark', [0.02, 0.03, 0.05], { gloss: 0.95 }, [0.02, 0.15], 'okeBlack'],
    ['bare-metal', 'Bare metal', [0.57, 0.56, 0.54], { gloss: 0.7, metal: true }, [0.5, 0.65], 'steel'],
    ['galvanised', 'Galvanised iron', [0.5, 0.51, 0.52], { gloss: 0.5, metal: true }, [0.36, 0.66], 'solarZinc'],
    ['rusted-iron', 'Rusted iron', [0.16, 0.09, 0.06], {}, [0.04, 0.16], 'solarRust'],
    ['tent-cloth', 'Tent cloth', [0.35, 0.3, 0.2], { transmittance: 0.3 }, [0.2, 0.5], 'cloth'],
    ['canvas', 'Canvas', [0.45, 0.41, 0.32], { transmittance: 0.12 }, [0.3, 0.6], 'cloth'],
    ['dark-clothes', 'Dark clothes', [0.05, 0.05, 0.06], {}, [0.01, 0.2], 'clothes'],
    ['light-clothes', 'Light clothes', [0.45, 0.44, 0.42], {}, [0.3, 0.6], 'lightClothes'],
    ['skin', 'Fair skin', [0.42, 0.29, 0.22], {}, [0.06, 0.44], 'skin'],
    ['dark-skin', 'Dark skin', [0.16, 0.09, 0.06], {}, [0.06, 0.44], 'skin'],
  ],
};

const matt = { transmittance: 0, gloss: 0, refractiveIndex: 1.5, metal: false } as const;

export const finishPresets: readonly FinishPreset[] = finishGroups.flatMap((group) =>
  rows[group].map(([id, label, reflectance, rest, range, source]) => ({
    id,
    group,
    label,
    finish: { ...matt, ...rest, reflectance },
    range,
    source: finishSources[source],
  })),
);

/** The finish of a preset. Throws for a word that is none: callers name them in code. */
export const finishNamed = (id: string): Finish => {
  const preset = finishPresets.find((each) => each.id === id);
  if (!preset) throw new Error(`no finish is called "${id}"`);
  return preset.finish;
};

/** Whether two finishes send light back alike. */
export const isSameFinish = (a: Finish, b: Finish): boolean =>
  a.transmittance === b.transmittance &&
  a.gloss === b.gloss &&
  a.metal === b.metal &&
  (a.gloss === 0 || a.metal || a.refractiveIndex === b.refractiveIndex) &&
  rgbOf(a).every((v, c) => v === rgbOf(b)[c]);

/** Linear red, green and blue of the share returned evenly. */
export const rgbOf = ({ reflectance }: Finish): readonly [number, number, number] =>
  typeof reflectance === 'number' ? [reflectance, reflectance, reflectance] : reflectance;

/** The preset that a finish is, or null for one with numbers of its own. */
export const presetOf = (finish: Finish): FinishPreset | null =>
  finishPresets.find((preset) => isSameFinish(preset.finish, finish)) ?? null;

/** Weights of linear red, green and blue in luminance: ITU-R BT.709, the primaries of sRGB. */
export const luminanceWeights = [0.2126, 0.7152, 0.0722] as const;

/**
 * Share of light that comes back in all under light from straight on, as a table of albedo gives it: what is returned
 * evenly, weighted as the eye does, and the sheen of a glossy face, ((n - 1) / (n + 1))^2.
 */
export const shareReturned = (finish: Finish): number => {
  const even = rgbOf(finish).reduce((sum, v, c) => sum + v * (luminanceWeights[c] as number), 0);
  if (finish.gloss === 0 || finish.metal) return even;
  const n = finish.refractiveIndex;
  return even + ((n - 1) / (n + 1)) ** 2;
};
