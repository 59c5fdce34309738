import { describe, expect, it } from 'vitest';
import { cameraView } from '../../core/camera/camera-view.ts';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { type PatchReading, patchReading } from '../../core/readings/patch-reading.ts';
import { patchView } from '../../core/readings/patch-view.ts';
import type { SurfacePoint } from '../../core/trace/surface-point.ts';
import type { Stage } from '../../core/world/stage.ts';
import type { Source } from '../../core/world/world.ts';
import { meanMoonRadiusRadians } from '../../core/world/world.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Relief of a patch');
const closedForm = 'closed form, parallel projection';
const practice = 'common practice, no published source';

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** A square patch of level ground seen from straight above, 400 m up: what leans in the picture leans by a thousandth. */
const half = 2;
const view = cameraView({
  position: [0, 400, 0],
  aim: [0, 0, 0],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 1500,
});
const patchArea = (2 * half) ** 2;
const cornersAt = (x: number, z: number): Vec3[] => [
  [x - half, 0, z + half],
  [x + half, 0, z + half],
  [x + half, 0, z - half],
  [x - half, 0, z - half],
];
/** The patch moved about by parts of a ray's step: the mean does not hang on where rays fall on a shadow's edge. */
const patches = Array.from({ length: 49 }, (_, i) => cornersAt(0.25 * ((i * 0.7549) % 1), 0.25 * ((i * 0.5698) % 1)));

/** A direction at a height over the ground and a bearing from north: oblique to the rays' grid, so that edges average out. */
const bearing = radians(27);
const toward = (grazingDegrees: number): Vec3 => {
  const a = radians(grazingDegrees);
  return [Math.sin(bearing) * Math.cos(a), Math.sin(a), -Math.cos(bearing) * Math.cos(a)];
};
/** A point lamp 20 km away: parallel light with a hard edge. */
const farLamp = (grazingDegrees: number): Source => {
  const position = toward(grazingDegrees).map((v) => v * 20_000) as unknown as Vec3;
  return standing(position, [0, 0, 0], discEmitter(0));
};
const moon = (grazingDegrees: number): Source => ({
  kind: 'moon',
  toward: toward(grazingDegrees),
  radiusRadians: meanMoonRadiusRadians,
});

// everything is as grey as the ground: contrast is of light alone
const finish = { reflectance: 0.18 };
const readPoints = (stage: Stage, points: readonly SurfacePoint[], source: Source): PatchReading => {
  const reading = patchReading(stage, points, source);
  if (!reading) throw new Error('the patch was not lit');
  return reading;
};
const read = (stage: Stage, source: Source): PatchReading =>
  readPoints(stage, patchView(stage, view, cornersAt(0, 0)), source);

const views = new Map<Stage, SurfacePoint[][]>();
const viewsOf = (stage: Stage): SurfacePoint[][] => {
  const known = views.get(stage) ?? patches.map((corners) => patchView(stage, view, corners));
  views.set(stage, known);
  return known;
};
/**
 * Means over the moved patches: the shadowed share, and the dark share that the contrast stands for, with which a mean may
 * be taken: two levels, one of them dark on a share s, have the contrast sqrt(s / (1 - s)).
 */
const means = (stage: Stage, source: Source): { readonly shadowed: number; readonly dark: number } => {
  const readings = viewsOf(stage).map((points) => readPoints(stage, points, source));
  const mean = (of: (reading: PatchReading) => number) => readings.reduce((sum, r) => sum + of(r), 0) / readings.length;
  return {
    shadowed: mean(({ shadowedShare }) => shadowedShare),
    dark: mean(({ rmsContrast }) => rmsContrast ** 2 / (1 + rmsContrast ** 2)),
  };
};

const [width, depth, height] = [0.6, 0.4, 0.2];
const boxAt = (east: number, north: number) => ({
  kind: 'box',
  position: [east, north, 0],
  widthMetres: width,
  depthMetres: depth,
  heightMetres: height,
});
/** Shadow on the ground of a box with sides east-west and north-south: its length times the width across the light. */
const boxShadow = (grazingDegrees: number) =>
  (height / Math.tan(radians(grazingDegrees))) * (width * Math.cos(bearing) + depth * Math.sin(bearing));

const fourPlaces = [
  [-1.03, -0.61],
  [-0.92, 1.27],
  [0.88, -0.45],
  [1.06, 1.36],
] as const;
const oneBox = stageWith(subjectOf('box', [boxAt(0.4, 0.7)], { finish }));
const fourBoxes = stageWith(
  subjectOf(
    'boxes',
    fourPlaces.map(([east, north]) => boxAt(east, north)),
    { finish },
  ),
);

const radius = 0.3;
/** Balls sunk to their middle. */
const domes = stageWith(
  subjectOf(
    'domes',
    fourPlaces.map(([east, north]) => ({
      kind: 'sphere',
      position: [east, north, -radius],
      radiusMetres: radius,
      sides: 96,
    })),
    { finish },
  ),
);
/**
 * Dark part of one dome's place seen from above: half an ellipse less half a circle on the ground, R^2 (1 / sin a - 1)
 * pi / 2, and what lies behind the terminator on the dome itself, R^2 (1 - sin a) pi / 2.
 */
const domeShadow = (grazingDegrees: number) => {
  const a = radians(grazingDegrees);
  return ((Math.PI / 2) * radius ** 2 * Math.cos(a) ** 2) / Math.sin(a);
};

const tolerance = { relative: 0.02 };
const share = { id: 'relief', source: closedForm, unit: '', tolerance };

describe('a patch of level ground seen from above', () => {
  it.each([10, 30, 60])('one box, light %d degrees over the ground: its shadow over the patch (rel 2 %)', (grazing) => {
    check({
      ...share,
      claim: `one box 0.2 m high, light ${grazing}° over the ground: share of the patch in shadow`,
      expected: boxShadow(grazing) / patchArea,
      ours: means(oneBox, farLamp(grazing)).shadowed,
    });
  });

  it.each([10, 20, 30, 45, 60])(
    'four boxes whose shadows lie apart, %d degrees: four times as much, and the contrast that goes with it (rel 2 %)',
    (grazing) => {
      const expected = (4 * boxShadow(grazing)) / patchArea;
      const { shadowed, dark } = means(fourBoxes, farLamp(grazing));
      check({ ...share, claim: `four such boxes, light ${grazing}°: share in shadow`, expected, ours: shadowed });
      check({
        ...share,
        claim: `four boxes, light ${grazing}°: RMS contrast of two levels, one of them dark`,
        source: 'standard deviation over mean, closed form; Peli 1990 for the measure',
        expected: Math.sqrt(expected / (1 - expected)),
        ours: Math.sqrt(dark / (1 - dark)),
      });
    },
  );

  it.each([10, 30])('four boxes under the moon, %d degrees: its half shadow counts by halves (rel 2 %)', (grazing) => {
    check({
      ...share,
      claim: `four such boxes, moon ${grazing}° high: share in shadow`,
      expected: (4 * boxShadow(grazing)) / patchArea,
      ours: means(fourBoxes, moon(grazing)).shadowed,
    });
  });

  it.each([10, 20, 30, 45, 60])('four hemispheres, %d degrees: shadow and dark side together (rel 2 %)', (grazing) => {
    check({
      ...share,
      claim: `four hemispheres 0.3 m high, light ${grazing}°: share in shadow or turned away`,
      expected: (4 * domeShadow(grazing)) / patchArea,
      ours: means(domes, farLamp(grazing)).shadowed,
    });
  });
});

describe('low side light reveals relief', () => {
  it.each([
    ['boxes', fourBoxes],
    ['hemispheres', domes],
  ] as const)('%s: falls at every step from 5 to 60 degrees', (name, stage) => {
    const contrasts = [5, 10, 20, 30, 45, 60].map((grazing) => read(stage, farLamp(grazing)).rmsContrast);
    expect(Math.min(...contrasts)).toBeGreaterThan(0.05);
    check({
      id: 'relief',
      claim: `four ${name}, light from 5° to 60°: steps at which contrast does not fall`,
      source: practice,
      unit: '',
      expected: 0,
      ours: contrasts.filter((contrast, i) => i > 0 && contrast >= (contrasts[i - 1] as number)).length,
      tolerance: { absolute: 0 },
    });
  });

  it('light on the camera’s axis: flat, and nothing in shadow', () => {
    const atLens = standing(view.position, [0, 0, 0], discEmitter(0));
    const row = { id: 'relief', source: practice, unit: '', expected: 0 };
    check({
      ...row,
      claim: 'four boxes, lamp at the lens: RMS contrast',
      ours: read(fourBoxes, atLens).rmsContrast,
      tolerance: { absolute: 0.01 },
    });
    check({
      ...row,
      claim: 'four boxes, lamp at the lens: share in shadow',
      ours: read(fourBoxes, atLens).shadowedShare,
      tolerance: { absolute: 0 },
    });
  });
});
