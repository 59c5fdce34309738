import type { Finish } from './schema/setup.ts';

/** A finish by a plain word, with where its reflectance is published. */
export interface FinishPreset {
  readonly id: string;
  readonly label: string;
  readonly finish: Finish;
  /** Published range of the reflectance of all visible or solar light together. */
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
  source: string,
];

// placeholder sources: to be checked against published tables before they are shown
const unchecked = 'to be checked';

const rows: readonly Row[] = [
  ['granite', 'Granite', [0.32, 0.3, 0.28], {}, [0.2, 0.35], unchecked],
  ['sandstone', 'Sandstone', [0.36, 0.27, 0.19], {}, [0.2, 0.4], unchecked],
  ['limestone', 'Limestone', [0.42, 0.39, 0.33], {}, [0.3, 0.45], unchecked],
  ['slate', 'Slate', [0.1, 0.1, 0.11], {}, [0.08, 0.14], unchecked],
  ['dark-rock', 'Dark rock', [0.09, 0.08, 0.08], {}, [0.05, 0.15], unchecked],
  ['wet-stone', 'Wet stone', [0.12, 0.11, 0.1], { gloss: 0.7, refractiveIndex: 1.33 }, [0.05, 0.2], unchecked],
  ['brick', 'Red brick', [0.35, 0.2, 0.14], {}, [0.2, 0.4], unchecked],
  ['whitewash', 'Whitewash', [0.76, 0.75, 0.72], {}, [0.5, 0.9], unchecked],
  ['concrete', 'Concrete', [0.3, 0.29, 0.27], {}, [0.1, 0.35], unchecked],
  ['weathered-timber', 'Weathered timber', [0.24, 0.21, 0.18], {}, [0.1, 0.3], unchecked],
  ['dark-timber', 'Dark timber', [0.14, 0.1, 0.07], {}, [0.05, 0.2], unchecked],
  ['bark', 'Bark', [0.14, 0.12, 0.09], {}, [0.05, 0.2], unchecked],
  ['foliage', 'Leaves', [0.08, 0.13, 0.05], {}, [0.05, 0.2], unchecked],
  ['thatch', 'Thatch', [0.2, 0.17, 0.12], {}, [0.15, 0.2], unchecked],
  ['grass', 'Green grass', [0.12, 0.18, 0.08], {}, [0.1, 0.26], unchecked],
  ['dry-grass', 'Dry grass', [0.26, 0.22, 0.13], {}, [0.16, 0.32], unchecked],
  ['soil', 'Dry soil', [0.24, 0.19, 0.14], {}, [0.1, 0.4], unchecked],
  ['wet-soil', 'Wet soil', [0.1, 0.08, 0.06], { gloss: 0.4, refractiveIndex: 1.33 }, [0.05, 0.15], unchecked],
  ['sand', 'Dry sand', [0.4, 0.35, 0.27], {}, [0.2, 0.45], unchecked],
  ['wet-sand', 'Wet sand', [0.22, 0.19, 0.14], { gloss: 0.75, refractiveIndex: 1.33 }, [0.1, 0.3], unchecked],
  ['gravel', 'Gravel', [0.24, 0.23, 0.21], {}, [0.1, 0.35], unchecked],
  ['fresh-snow', 'Fresh snow', [0.86, 0.87, 0.88], {}, [0.75, 0.95], unchecked],
  ['old-snow', 'Old snow', [0.6, 0.6, 0.6], {}, [0.4, 0.7], unchecked],
  ['water', 'Still water', [0.02, 0.025, 0.025], { gloss: 1, refractiveIndex: 1.333 }, [0.01, 0.1], unchecked],
  ['asphalt', 'Asphalt', [0.09, 0.09, 0.09], {}, [0.05, 0.2], unchecked],
  ['white-paint', 'White paint', [0.75, 0.75, 0.74], { gloss: 0.6 }, [0.5, 0.9], unchecked],
  ['dark-paint', 'Dark paint', [0.06, 0.07, 0.08], { gloss: 0.8 }, [0.02, 0.15], unchecked],
  ['bare-metal', 'Bare metal', [0.55, 0.54, 0.52], { gloss: 0.7, metal: true }, [0.4, 0.7], unchecked],
  ['rusted-iron', 'Rusted iron', [0.16, 0.09, 0.06], {}, [0.1, 0.2], unchecked],
  ['tent-cloth', 'Tent cloth', [0.35, 0.3, 0.2], { transmittance: 0.3 }, [0.2, 0.5], unchecked],
  ['dark-clothes', 'Dark clothes', [0.05, 0.05, 0.06], {}, [0.02, 0.1], unchecked],
  ['light-clothes', 'Light clothes', [0.45, 0.44, 0.42], {}, [0.3, 0.6], unchecked],
  ['skin', 'Skin', [0.42, 0.29, 0.22], {}, [0.05, 0.65], unchecked],
];

const matt = { transmittance: 0, gloss: 0, refractiveIndex: 1.5, metal: false } as const;

export const finishPresets: readonly FinishPreset[] = rows.map(([id, label, reflectance, rest, range, source]) => ({
  id,
  label,
  finish: { ...matt, ...rest, reflectance },
  range,
  source,
}));

/** The finish of a preset. Throws for a word that is none: callers name them in code. */
export const finishNamed = (id: string): Finish => {
  const preset = finishPresets.find((each) => each.id === id);
  if (!preset) throw new Error(`no finish is called "${id}"`);
  return preset.finish;
};
