import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { between, seedFrom } from './shared/between.ts';
import { roughExtents } from './shared/rough-extents.ts';
import { tidyParts } from './shared/tidy-parts.ts';

type Box = Extract<PartDraft, { kind: 'box' }>;

/** Share of the stone that stands in the ground. */
const sunkShare = 0.12;
const topShare = 0.72;
/** The stone is fitted until all sizes are so near, or so often. */
const goodMetres = 5e-4;
const rounds = 16;

export const standingStone: Kit = {
  name: 'standing-stone',
  label: 'Standing stone',
  says: 'One upright stone, rough and worn.',
  fields: [
    { key: 'heightMetres', label: 'Height over the ground', unit: 'm', min: 0.4, max: 7, initial: 2.2, step: 0.05 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 0.2, max: 4, initial: 0.9, step: 0.05 },
    { key: 'depthMetres', label: 'Depth', unit: 'm', min: 0.15, max: 3, initial: 0.5, step: 0.05 },
    { key: 'leanDegrees', label: 'Lean to the right', unit: '°', min: -25, max: 25, initial: 5, step: 1 },
    { key: 'roughMetres', label: 'Bumps', unit: 'm', min: 0, max: 0.15, initial: 0.04, step: 0.005 },
    { key: 'dimples', label: 'Hollows', unit: '', min: 0, max: 60, initial: 20, step: 1 },
  ],
  make: (
    { heightMetres = 2.2, widthMetres = 0.9, depthMetres = 0.5, leanDegrees = 5, roughMetres = 0.04, dimples = 20 },
    random,
  ) => {
    const least = Math.min(widthMetres, depthMetres, heightMetres);
    const rough = {
      heightMetres: Math.min(roughMetres, least * 0.2),
      sizeMetres: Math.max(least * between(random, 0.95, 1.2), 0.12),
      seed: seedFrom(random),
    };
    const hollows = {
      count: Math.round(dimples),
      radiusMetres: least * between(random, 0.22, 0.32),
      depthMetres: Math.min(0.03, least * 0.06),
      seed: seedFrom(random),
    };
    const leanSine = Math.abs(Math.sin((leanDegrees * Math.PI) / 180));
    const sunk = sunkShare * heightMetres + (widthMetres / 2) * leanSine;
    const stone = ([width, depth, height]: readonly [number, number, number], lean: number): Box => ({
      kind: 'box',
      name: 'Stone',
      position: [0, 0, -sunk],
      rollDegrees: lean,
      widthMetres: width,
      depthMetres: depth,
      heightMetres: height,
      roundMetres: 0.32 * Math.min(width, depth),
      topShare,
      dimples: hollows.count > 0 ? hollows : null,
      rough: rough.heightMetres > 0 ? rough : null,
    });
    // bumps stand out and hollows in, so the stone is fitted to what was typed
    let size: [number, number, number] = [widthMetres, depthMetres, heightMetres + sunk];
    for (let round = 0; round < rounds; round++) {
      const { low, high } = roughExtents(stone(size, 0));
      const { high: leaning } = leanDegrees === 0 ? { high } : roughExtents(stone(size, leanDegrees));
      const off = [high[0] - low[0] - widthMetres, high[1] - low[1] - depthMetres, leaning[2] - heightMetres];
      if (off.every((each) => Math.abs(each) < goodMetres)) break;
      size = [
        (size[0] * widthMetres) / (high[0] - low[0]),
        (size[1] * depthMetres) / (high[1] - low[1]),
        size[2] + heightMetres - leaning[2],
      ];
    }
    return { finish: finishNamed('granite'), parts: tidyParts([stone(size, leanDegrees)]) };
  },
};
