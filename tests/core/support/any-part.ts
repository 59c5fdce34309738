import fc from 'fast-check';
import type { Solid } from './meshes.ts';

/** Parts over the whole ranges of the schema: sizes from a millimetre to two kilometres, even in their logarithm. */

const within = (low: number, high: number) =>
  fc.integer({ min: 0, max: 1e6 }).map((v) => low + ((high - low) * v) / 1e6);
const logarithmic = (low: number, high: number) =>
  within(Math.log(low), Math.log(high)).map((v) => Math.min(Math.max(Math.exp(v), low), high));
/** Often one of the ends. */
const spread = (low: number, high: number, ...others: number[]): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 3, arbitrary: logarithmic(low, high) },
    { weight: 1, arbitrary: fc.constantFrom(low, high, ...others) },
  );

const size = spread(0.001, 2000, 1);
const share = within(0, 1);
const seed = fc.integer({ min: 0, max: 4294967295 });
const sides = fc.oneof(fc.integer({ min: 3, max: 128 }), fc.constantFrom(3, 7, 8, 128));
const creaseDegrees = within(0, 180);
const rough = fc.option(fc.record({ heightMetres: spread(0.0001, 20, 0), sizeMetres: spread(0.01, 200), seed }), {
  freq: 1,
});
const dimples = fc.option(
  fc.record({
    count: fc.integer({ min: 0, max: 20 }),
    radiusMetres: spread(0.005, 5),
    depthMetres: spread(0.0001, 1),
    seed,
  }),
);

type Points = [number, number][];

/** An outline round a point that never meets itself, either way round. */
const star = (radii: readonly number[], reach: number, from: number): Points =>
  radii.map((r, i): [number, number] => {
    const turn = (2 * Math.PI * (i + from)) / radii.length;
    return [reach * (0.1 + 0.9 * r) * Math.cos(turn), reach * (0.1 + 0.9 * r) * Math.sin(turn)];
  });
const outline = fc
  .tuple(fc.array(share, { minLength: 3, maxLength: 60 }), size, share, fc.boolean())
  .map(([radii, reach, from, back]) => (back ? star(radii, reach, from).reverse() : star(radii, reach, from)));

const holed = fc
  .tuple(size, fc.integer({ min: 1, max: 16 }), fc.integer({ min: 3, max: 9 }), share, size)
  .map(([reach, count, points, from, heightMetres]) => ({
    kind: 'prism' as const,
    heightMetres,
    outline: [
      [-reach, -reach],
      [reach, -reach],
      [reach, reach],
      [-reach, reach],
    ] as Points,
    holes: Array.from({ length: count }, (_, h) =>
      Array.from({ length: points }, (_, k): [number, number] => {
        const turn = (2 * Math.PI * (k + from)) / points;
        return [
          reach * (-0.75 + 0.5 * (h % 4) + 0.2 * Math.cos(turn)),
          reach * (-0.75 + 0.5 * Math.floor(h / 4) + 0.2 * Math.sin(turn)),
        ];
      }),
    ),
  }));

const turned = fc
  .tuple(size, fc.array(fc.tuple(share, share), { minLength: 2, maxLength: 14 }), fc.boolean(), fc.boolean())
  .map(([reach, steps, back, closed]) => {
    let up = 0;
    const rising = steps.map(([out, rise]): [number, number] => {
      up = Math.min(up + reach * (0.01 + 0.1 * rise), 2000);
      return [out < 0.1 ? 0 : reach * out, up];
    });
    // a ring goes up outside and down inside
    const inner = [...rising].reverse().map(([out, height]): [number, number] => [out * 0.5, height]);
    const profile = closed ? [...rising, ...inner] : rising;
    return { kind: 'turned' as const, closed, profile: back ? [...profile].reverse() : profile };
  });

const loft = fc
  .tuple(
    fc.array(fc.array(share, { minLength: 20, maxLength: 20 }), { minLength: 2, maxLength: 8 }),
    fc.integer({ min: 3, max: 20 }),
    size,
    fc.boolean(),
  )
  .map(([radii, points, reach, back]) => ({
    kind: 'loft' as const,
    sections: radii.map((own, s) => {
      const ring = star(own.slice(0, points), reach, 0);
      return { northMetres: Math.min(s * reach * 0.2, 2000 - 9 + s), outline: back && s % 2 ? ring.reverse() : ring };
    }),
  }));

const wall = fc
  .tuple(
    size,
    size,
    size,
    fc.oneof(fc.constant(0), spread(0.001, 200)),
    fc.array(fc.tuple(share, share, share, fc.constantFrom('flat' as const, 'round' as const, 'pointed' as const)), {
      maxLength: 24,
    }),
    fc.boolean(),
  )
  .map(([widthMetres, thicknessMetres, heightMetres, gableMetres, wishes, inRows]) => {
    const cell = widthMetres / Math.max(wishes.length, 1);
    return {
      kind: 'wall' as const,
      widthMetres,
      thicknessMetres,
      heightMetres,
      gableMetres,
      openings: wishes.map(([wide, sill, high, head], i) => {
        const width = Math.min(Math.max(cell * (inRows ? 0.5 : 0.2 + 0.6 * wide), 0.02), 500);
        const least = head === 'flat' ? 0.02 : width * 1.01;
        return {
          acrossMetres: Math.min(Math.max(cell * (i + 0.5) - widthMetres / 2, -1000), 1000),
          sillMetres: sill < 0.4 ? 0 : Math.min(heightMetres * (inRows ? 0.2 : 0.3 * sill), 200),
          widthMetres: width,
          heightMetres: Math.min(Math.max(heightMetres * (inRows ? 0.5 : 0.2 + 0.4 * high), least, 0.02), 500),
          head,
        };
      }),
    };
  });

/** Arbitraries of every kind of part. What the schema refuses (a capsule lower than it is wide) is left to it. */
export const anyPart: Readonly<Record<string, fc.Arbitrary<Solid>>> = {
  box: fc.record({
    kind: fc.constant('box' as const),
    widthMetres: size,
    depthMetres: size,
    heightMetres: size,
    roundMetres: fc.oneof(fc.constant(0), spread(1e-6, 100)),
    topShare: within(0.05, 2),
    dimples,
    rough,
  }),
  wedge: fc.record({
    kind: fc.constant('wedge' as const),
    widthMetres: size,
    depthMetres: size,
    heightMetres: size,
    ridgeShare: fc.oneof(share, fc.constantFrom(0, 1)),
  }),
  cylinder: fc.record({
    kind: fc.constant('cylinder' as const),
    radiusMetres: size,
    topRadiusMetres: fc.option<number, null>(size),
    heightMetres: size,
    sides,
    rough,
  }),
  cone: fc.record({ kind: fc.constant('cone' as const), radiusMetres: size, heightMetres: size, sides, rough }),
  sphere: fc.record({
    kind: fc.constant('sphere' as const),
    radiusMetres: size,
    radiusNorthMetres: fc.option<number, null>(size),
    heightMetres: fc.option<number, null>(size),
    sides,
    rough,
  }),
  capsule: fc.tuple(spread(0.001, 900), within(1, 9), sides, rough).map(([radiusMetres, slender, sides, rough]) => ({
    kind: 'capsule' as const,
    radiusMetres,
    heightMetres: Math.min(2 * radiusMetres * slender, 2000),
    sides,
    rough,
  })),
  plane: fc.record({ kind: fc.constant('plane' as const), widthMetres: size, depthMetres: size, rough }),
  ring: fc
    .tuple(
      spread(0.01, 2000),
      within(0.02, 0.98),
      within(0.1, 3),
      fc.oneof(within(10, 360), fc.constantFrom(10, 180, 359.999, 360)),
      sides,
      rough,
    )
    .map(([radiusMetres, thick, topShare, arcDegrees, sides, rough]) => ({
      kind: 'ring' as const,
      radiusMetres,
      tubeRadiusMetres: Math.max((radiusMetres * thick) / Math.max(topShare, 1), 0.001),
      topShare,
      arcDegrees,
      sides,
      rough,
    })),
  turned: fc
    .tuple(turned, sides, creaseDegrees, rough)
    .map(([part, sides, creaseDegrees, rough]) => ({ ...part, sides, creaseDegrees, rough })),
  prism: fc.record({ kind: fc.constant('prism' as const), outline, heightMetres: size, creaseDegrees }),
  'prism with holes': holed,
  loft: fc.tuple(loft, creaseDegrees, rough).map(([part, creaseDegrees, rough]) => ({ ...part, creaseDegrees, rough })),
  wall,
};
