import { describe, expect, it } from 'vitest';
import { anyHit } from '../../../core/geometry/cast-ray.ts';
import { add, distance, dot, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { directLuminance, look } from '../../../core/trace/direct-light.ts';
import { beamInHaze } from '../../../core/trace/haze-light.ts';
import { holderAlong, holderLuminance } from '../../../core/trace/holder-light.ts';
import { traceLayers } from '../../../core/trace/layer.ts';
import { type LampSource, momentsTaken } from '../../../core/trace/moments-taken.ts';
import { airOf } from '../../../core/world/air.ts';
import { scatterPhase } from '../../../core/world/air-light.ts';
import { placeAtShare, type Source } from '../../../core/world/world.ts';
import { barePoint } from '../../reference/support/lamps.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const hazeVisibilityKm = 0.4;
const sigma = Math.log(20) / (1000 * hazeVisibilityKm);
const air = airOf({ hazeVisibilityKm }) as NonNullable<ReturnType<typeof airOf>>;

const steps = (count: number): number[] => Array.from({ length: count }, (_, i) => (i + 0.5) / count);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

/** A bare lamp's light that haze on a way sends on, as far as the lamp is seen from there; midpoint rule. */
const quadrature = (
  position: Vec3,
  origin: Vec3,
  direction: Vec3,
  metres: number,
  isSeen: (place: Vec3, toLamp: Vec3, away: number) => boolean = () => true,
) => {
  const count = 4000;
  return (
    metres *
    mean(
      steps(count).map((share) => {
        const place = add(origin, scale(direction, share * metres));
        const away = distance(place, position);
        const toLamp = normalize(sub(position, place));
        if (!isSeen(place, toLamp, away)) return 0;
        const arrives = Math.exp(-sigma * (share * metres + away)) / (4 * Math.PI * away ** 2);
        return arrives * sigma * scatterPhase(dot(toLamp, direction));
      }),
    )
  );
};

describe('beamInHaze of a lamp on its way', () => {
  // a wall hides the far half of the way from much of the look, so that pairs of place and moment differ
  const stage = {
    ...stageWith(
      subjectOf('wall', [{ kind: 'box', position: [2, 5, 0], widthMetres: 0.2, depthMetres: 10, heightMetres: 8 }]),
    ),
    air,
  };
  const lamp: LampSource = {
    kind: 'lamp',
    emitter: barePoint(),
    path: [
      { seconds: 0, position: [4, 3, 10], aim: [0, 3, 0] },
      { seconds: 1, position: [4, 3, -12], aim: [0, 3, 0] },
    ],
    onOff: [0, 1],
    holder: null,
  };
  const [origin, direction]: [Vec3, Vec3] = [
    [0, 3, 12],
    [0, 0, -1],
  ];
  const taken = momentsTaken(stage, lamp, 0);
  const expected = mean(
    taken.poses.map(({ position }) =>
      quadrature(
        position,
        origin,
        direction,
        24,
        (place, toLamp, away) => !anyHit(stage.tree, place, toLamp, away * (1 - 1e-5)),
      ),
    ),
  );
  const estimate = (turnOf: (choice: number) => readonly number[]) =>
    mean(
      steps(60).flatMap((choice) =>
        turnOf(choice).flatMap((turn) =>
          steps(4).map((along) =>
            beamInHaze(stage, air, lamp, { origin, direction }, 24, taken, null, { along, choice, turn }),
          ),
        ),
      ),
    );

  it('is as bright as all pairs of moment and place together (3 %), which one number for turn and shadow is not', () => {
    expect(Math.abs(estimate(() => steps(15)) / expected - 1)).toBeLessThan(0.03);
    expect(Math.abs(estimate((choice) => [choice]) / expected - 1)).toBeGreaterThan(0.03);
  });
});

// seen from the side and the front: their front is lit, and much of what the lamp lights behind them would show
describe('whoever holds a lamp in haze', () => {
  const clear = stageWith();
  const stage = { ...clear, air };
  const lamp: LampSource = {
    kind: 'lamp',
    emitter: barePoint(),
    path: [{ seconds: 0, position: [0, 1.2, 0], aim: [0, 1.2, 10] }],
    onOff: [0, 1],
    holder: { reflectance: 0.1, isDrawn: true },
  };
  const taken = { ...momentsTaken(stage, lamp, 0), choice: 0.5 };
  const ray = { origin: [40, 1.3, 40] as Vec3, direction: normalize([-40, -0.1, -40.45]) };
  const hits = holderAlong(taken, ray, 1e5);
  const metres = hits?.[0]?.t ?? Number.NaN;
  const uv = { u: 0.5, v: 0.5 };
  const place = add(ray.origin, scale(ray.direction, metres));
  const lit = (on: typeof stage | typeof clear) => holderLuminance(on, lamp, ray, hits ?? [], uv, taken);

  it('dims by the way from lamp to clothes and to the eye: exp(-sigma d) (rel 1e-9)', () => {
    expect(metres).toBeGreaterThan(55);
    const expected = Math.exp(-sigma * (metres + distance(place, placeAtShare(lamp, 0.5).position)));
    expect(Math.abs(lit(stage) / lit(clear) / expected - 1)).toBeLessThan(1e-9);
  });

  it('hides the light of haze behind them: it is that of the way up to them (0.5 %)', () => {
    const seen = look(stage, ray, null);
    const all = mean(
      steps(32).map((along) => {
        const numbers = { ...uv, time: 0.5, taken, haze: { along, choice: 0.5, turn: 0.5 } };
        return directLuminance(stage, lamp, seen, numbers)[1];
      }),
    );
    const position = placeAtShare(lamp, 0.5).position;
    const [before, whole] = [metres, 80].map((far) => quadrature(position, ray.origin, ray.direction, far)) as [
      number,
      number,
    ];
    expect(Math.abs((all - lit(stage)) / before - 1)).toBeLessThan(0.005);
    expect(whole / before).toBeGreaterThan(1.02);
  });
});

describe('bounced light in haze', () => {
  it('dims by the way in haze alone, as direct light does: a look up at a tower over its top (rel 1e-6)', () => {
    const clear = stageWith(
      subjectOf('tower', [
        { kind: 'box', position: [0, 5, 0], widthMetres: 400, depthMetres: 10, heightMetres: 400 },
        { kind: 'box', position: [0, -60, 190], widthMetres: 400, depthMetres: 10, heightMetres: 10 },
      ]),
    );
    const direction = normalize([0, 150, -60]);
    const right: Vec3 = [1, 0, 0];
    const view = {
      position: [0, 50, 60] as Vec3,
      forward: direction,
      right,
      up: normalize([0, 60, 150]),
      tanHalfWidth: 1e-6,
      tanHalfHeight: 1e-6,
      lensRadiusMetres: 0,
      focusMetres: 1,
    };
    const sky: Source = { kind: 'sky' };
    const bounced = (stage: typeof clear) => {
      const [whole, direct] = ([1, 0] as const).map(
        (bounces) => traceLayers(stage, view, [sky], { width: 1, height: 1, samples: 64 }, bounces)[0]?.[1] ?? 0,
      ) as [number, number];
      return whole - direct;
    };
    const inHaze = (100 - 50) / (direction[1] as number);
    expect(bounced(clear)).toBeGreaterThan(1e-4);
    expect(Math.abs(bounced({ ...clear, air }) / bounced(clear) / Math.exp(-sigma * inHaze) - 1)).toBeLessThan(1e-6);
  });
});
