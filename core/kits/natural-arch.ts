import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { between, seedFrom } from './shared/between.ts';
import type { Place } from './shared/frame.ts';
import { roughExtents } from './shared/rough-extents.ts';
import { tidyParts } from './shared/tidy-parts.ts';

type Ring = Extract<PartDraft, { kind: 'ring' }>;
type Rough = NonNullable<Ring['rough']> & { readonly seed: number };

/** How far the legs go on under the ground, metres, beside what a leaning end needs. */
const sunkMetres = 0.3;
/** The arch is fitted until width and height are so near, or so often. */
const goodMetres = 5e-4;
const rounds = 16;

/** An arch by its outside: width at the foot, height, and the radii of its legs and of its top. */
interface Shape {
  readonly wide: number;
  readonly high: number;
  readonly leg: number;
  readonly top: number;
}

/** Half the turn of the ring, its radius, and how high its ends stand over the ground: legs under a half ring, or less than half a ring. */
const ringOf = ({ wide, high, leg, top }: Shape): { half: number; radius: number; foot: number } => {
  const radiusAt = (half: number) => wide / 2 / Math.sin(half) - leg;
  const heightAt = (half: number) => radiusAt(half) * (1 - Math.cos(half)) + top - leg * Math.cos(half);
  const right = Math.PI / 2;
  if (heightAt(right) <= high) return { half: right, radius: wide / 2 - leg, foot: high - heightAt(right) };
  let [low, most] = [0.09, right];
  for (let k = 0; k < 50; k++) {
    const middle = (low + most) / 2;
    if (heightAt(middle) < high) low = middle;
    else most = middle;
  }
  // the outer edge of a leaning end lies on the ground, its inner edge under it
  return { half: most, radius: radiusAt(most), foot: -leg * Math.cos(most) };
};

const archPart = (shape: Shape, rough: Rough | null): Ring => {
  const { half, radius, foot } = ringOf(shape);
  return {
    kind: 'ring',
    name: 'Arch',
    position: [0, 0, foot],
    radiusMetres: radius,
    tubeRadiusMetres: shape.leg,
    topShare: shape.top / shape.leg,
    arcDegrees: Math.min((2 * half * 180) / Math.PI, 180),
    sides: 16,
    rough,
  };
};

/** Legs under the ends of the ring, down into the ground; they reach a little up into it. */
const legParts = (
  { leg }: Shape,
  { radius, half, foot }: ReturnType<typeof ringOf>,
  rough: Rough | null,
): PartDraft[] =>
  [-1, 1].map((side) => ({
    kind: 'cylinder',
    name: 'Foot',
    position: [side * radius * Math.sin(half), 0, -sunkMetres],
    radiusMetres: leg * 0.99,
    topRadiusMetres: leg * (foot > 0 ? 0.97 : 0.5),
    heightMetres: sunkMetres + Math.max(foot, 0) + 0.25 * leg,
    sides: 16,
    rough: rough && { ...rough, seed: rough.seed + 1 },
  }));

/** Bare rock round a leg, in low uneven steps, the widest lowest. */
const stepParts = (east: number, leg: number, step: number, count: number, random: () => number): PartDraft[] =>
  Array.from({ length: count }, (_, k): PartDraft => {
    const size = leg * (2.2 + 1.1 * (count - k));
    const [width, depth] = [size * between(random, 0.85, 1.15), size * between(random, 0.7, 1)];
    return {
      kind: 'box',
      name: 'Rock step',
      position: [east + leg * between(random, -0.35, 0.35), leg * between(random, -0.35, 0.35), -0.2],
      turnDegrees: between(random, -35, 35),
      widthMetres: width,
      depthMetres: depth,
      heightMetres: step * (k + 1) * between(random, 0.9, 1.1) + 0.2,
      roundMetres: Math.min(0.1, step / 3),
      topShare: 0.92,
      rough: {
        heightMetres: Math.min(0.12 * size, 0.5),
        sizeMetres: Math.max(size / 2.2, 0.2),
        seed: seedFrom(random),
      },
    };
  });

export const naturalArch: Kit = {
  name: 'natural-arch',
  label: 'Natural arch',
  says: 'A weathered arch of rock; its opening faces the front.',
  fields: [
    { key: 'widthMetres', label: 'Width over all', unit: 'm', min: 3, max: 60, initial: 22, step: 0.5 },
    { key: 'heightMetres', label: 'Height over all', unit: 'm', min: 2, max: 40, initial: 11, step: 0.5 },
    { key: 'legMetres', label: 'Thickness of the legs', unit: 'm', min: 0.5, max: 10, initial: 5, step: 0.25 },
    { key: 'topMetres', label: 'Thickness of the top', unit: 'm', min: 0.25, max: 10, initial: 4, step: 0.25 },
    { key: 'roughMetres', label: 'Bumps', unit: 'm', min: 0, max: 1.5, initial: 0.4, step: 0.05 },
    { key: 'stepMetres', label: 'Steps of rock at the feet', unit: 'm', min: 0, max: 1, initial: 0.3, step: 0.05 },
  ],
  make: (
    { widthMetres = 22, heightMetres = 11, legMetres = 5, topMetres = 4, roughMetres = 0.4, stepMetres = 0.3 },
    random,
  ) => {
    // legs and top leave an opening whatever is typed
    const leg = Math.min(legMetres / 2, 0.21 * widthMetres, 0.4 * heightMetres);
    const top = Math.max(Math.min(topMetres / 2, leg, 0.3 * heightMetres), 0.12 * leg);
    const height = Math.min(roughMetres, 0.35 * top);
    const rough =
      height > 0 ? { heightMetres: height, sizeMetres: Math.max(leg * 0.9, 4 * height), seed: seedFrom(random) } : null;
    let shape: Shape = { wide: widthMetres, high: heightMetres, leg, top };
    let shift = 0;
    for (let round = 0; round < rounds; round++) {
      const { low, high } = roughExtents(archPart(shape, rough));
      shift = -(low[0] + high[0]) / 2;
      if (Math.max(Math.abs(high[0] - low[0] - widthMetres), Math.abs(high[2] - heightMetres)) < goodMetres) break;
      shape = {
        ...shape,
        wide: shape.wide + widthMetres - (high[0] - low[0]),
        high: shape.high + heightMetres - high[2],
      };
    }
    const ring = ringOf(shape);
    const steps =
      stepMetres > 0
        ? [-1, 1].flatMap((side) => stepParts(side * ring.radius * Math.sin(ring.half), leg, stepMetres, 3, random))
        : [];
    const arch = [archPart(shape, rough), ...legParts(shape, ring, rough)].map((each) => {
      const [east, , up] = each.position as Place;
      return { ...each, position: [east + shift, 0, up] as [number, number, number] };
    });
    return { finish: finishNamed('sandstone'), parts: tidyParts([...arch, ...steps]) };
  },
};
