import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { add, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { holderAlong, holderLuminance } from '../../../core/trace/holder-light.ts';
import { traceLayers } from '../../../core/trace/layer.ts';
import { tracePicture } from '../../../core/trace/picture.ts';
import { exactSeconds } from '../../../core/units/third-stops.ts';
import { body, bodyAlong, isInTheWay } from '../../../core/walk/body.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { discEmitter, onePassSetup, stageWith, standing } from '../support/scenes.ts';

describe('bodyAlong', () => {
  const feet: Vec3 = [1, 0.4, -2];
  const [low, high] = [feet[1] + body.radiusMetres, feet[1] + body.heightMetres - body.radiusMetres];
  it('meets the body where it is first a radius from its axis, and only where the body is in the way', () => {
    const random = seededRandom(3);
    const between = (from: number, to: number) => from + (to - from) * random();
    let [met, missed] = [0, 0];
    for (let i = 0; i < 4000; i++) {
      const origin: Vec3 = [between(-3, 5), between(-1, 5), between(-6, 2)];
      const toward: Vec3 = [feet[0] + between(-0.6, 0.6), feet[1] + between(-0.3, 2.1), feet[2] + between(-0.6, 0.6)];
      const direction = normalize(sub(toward, origin));
      // an eye within the body sees nothing of it
      if (isInTheWay(feet, origin, add(origin, scale(direction, 1e-9)))) continue;
      const hit = bodyAlong(feet, origin, direction);
      const inTheWay = isInTheWay(feet, origin, add(origin, scale(direction, 100)));
      expect(hit !== null, `ray ${origin} ${direction}`).toBe(inTheWay);
      if (!hit) {
        missed++;
        continue;
      }
      met++;
      const at = add(origin, scale(direction, hit.t));
      const axis: Vec3 = [feet[0], Math.min(Math.max(at[1], low), high), feet[2]];
      expect(Math.hypot(at[0] - axis[0], at[1] - axis[1], at[2] - axis[2])).toBeCloseTo(body.radiusMetres, 9);
      at.forEach((v, k) => {
        expect(hit.normal[k]).toBeCloseTo((v - (axis[k] as number)) / body.radiusMetres, 6);
      });
      expect(isInTheWay(feet, origin, add(origin, scale(direction, hit.t - 1e-6)))).toBe(false);
    }
    expect(Math.min(met, missed)).toBeGreaterThan(100);
  });
});

/** A grey wall under an even sky that fills the picture, and somebody before it with a torch that is on for a while. */
const beforeWall = (
  seconds: number,
  more: { clothes?: string; holder?: boolean; held?: string; haze?: number } = {},
) => {
  const { clothes = 'dark', holder = true, held = 'hand', haze = null } = more;
  const setup = onePassSetup({
    camera: { position: [0, -6, 1], aim: [0, 0, 1], focalLengthMm: 200, drawn: { holder } },
    ground: { finish: { reflectance: 0 } },
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        finish: { reflectance: 0.25 },
        parts: [{ kind: 'box', position: [0, 2, 0], widthMetres: 60, depthMetres: 0.4, heightMetres: 40 }],
      },
    ],
    place: { skylight: { illuminanceLux: 0.02, temperatureKelvin: 4200 }, hazeVisibilityKm: haze },
    pass: { on: 0, off: seconds, held, levelPercent: 0, waypoints: [{ position: [0, 0, 1], aim: [0, 2, 1] }] },
    frame: { whiteBalance: { kelvin: 4200, tint: 0 } },
  });
  const { world, worldFrame } = onlyPassOf({
    ...setup,
    walking: { ...setup.walking, clothes: clothes === 'light' ? 'light' : 'dark' },
  });
  const picture = tracePicture(world, worldFrame, { width: 3, height: 3, samples: 400 });
  return picture[4 * 3 + 1] as number;
};

describe('somebody before a wall under an even sky', () => {
  const open = beforeWall(4, { holder: false });
  // both stand upright under half of the sky, so that each is as bright as it is pale
  it.each([
    [4, 'dark'],
    [4, 'light'],
    [9, 'dark'],
  ] as const)(
    'stays %d s of 10 in %s clothes: takes that share of the wall, and gives its own (rel 0.03)',
    (seconds, clothes) => {
      const share = seconds / exactSeconds(10);
      const expected = 1 - share + (share * body.reflectance[clothes]) / 0.25;
      expect(Math.abs(beforeWall(seconds, { clothes }) / open / expected - 1)).toBeLessThanOrEqual(0.03);
    },
  );
  it('in haze both give way to the sky by exp(-sigma d), each by its own way (rel 0.03)', () => {
    const haze = 0.05;
    const share = 9 / exactSeconds(10);
    // in luminances of the sky: upright under half of it, the wall 7.8 m away, the middle of the body 6 m less its reach
    const through = (metres: number) => Math.exp((-Math.log(20) / 50) * metres);
    const seen = (reflectance: number, metres: number) =>
      (through(metres) * reflectance) / 2 + (1 - through(metres)) * 1;
    const wall = seen(0.25, 7.8);
    const holder = seen(body.reflectance.dark, 6 - body.reachMetres);
    const expected = 1 - share + (share * holder) / wall;
    const hazy = beforeWall(9, { haze }) / beforeWall(9, { haze, holder: false });
    expect(Math.abs(hazy / expected - 1)).toBeLessThanOrEqual(0.03);
  });
  it('a lamp on a stand has nobody behind it', () => {
    expect(Math.abs(beforeWall(9, { held: 'stand' }) / open - 1)).toBeLessThanOrEqual(1e-9);
  });
});

describe('a lamp on a stand behind somebody with another lamp', () => {
  /** Light of the stand alone on the wall where the holder covers it, as a share of what it is without people. */
  const share = (from: number, to: number) => {
    const setup = (holder: boolean) =>
      onePassSetup({
        camera: { position: [0, -6, 1], aim: [0, 0, 1], focalLengthMm: 200, drawn: { holder } },
        subjects: [
          {
            id: 'wall',
            name: 'Wall',
            parts: [{ kind: 'box', position: [0, 2, 0], widthMetres: 60, depthMetres: 0.4, heightMetres: 40 }],
          },
        ],
        place: { skylight: { illuminanceLux: 0 } },
        frame: { seconds: 30 },
        pass: { on: from, off: to, levelPercent: 0, waypoints: [{ position: [0, 0, 1], aim: [0, 2, 1] }] },
        passes: [
          {
            id: 's',
            name: 'S',
            lampId: 'torch',
            held: 'stand',
            on: 0,
            off: 10,
            waypoints: [{ position: [5, -2, 3], aim: [0, 2, 1] }],
          },
        ],
      });
    const [drawn, bare] = [true, false].map((holder) => {
      const { world, worldFrame } = onlyPassOf(setup(holder));
      return tracePicture(world, worldFrame, { width: 3, height: 3, samples: 1 })[4 * 3 + 1] as number;
    }) as [number, number];
    return drawn / bare;
  };
  // only while both are there does the holder take anything
  it.each([
    [15, 25, 1],
    [10, 20, 1],
    [0, 10, 0],
    [5, 20, 0.5],
    [2, 4, 0.8],
  ])('lit 0 to 10 s, the holder there %d to %d s: %d of its light is left', (from, to, left) => {
    expect(share(from, to)).toBeCloseTo(left, 9);
  });
});

describe('bounced light behind whoever holds a lamp', () => {
  it('does not come through them: a torch turned away, seen only as a back (0 where the body covers all)', () => {
    const setup = {
      ...onePassSetup({
        camera: { position: [0, -6, 1], aim: [0, 0, 1], focalLengthMm: 300 },
        subjects: [
          {
            id: 'wall',
            name: 'Wall',
            finish: { reflectance: 0.8 },
            parts: [{ kind: 'box', position: [0, 2, 0], widthMetres: 6, depthMetres: 0.4, heightMetres: 4 }],
          },
        ],
        pass: { waypoints: [{ position: [0, 0, 1], aim: [0, 2, 0.5] }] },
      }),
      bounces: 1,
    };
    const { world, light } = onlyPassOf(setup);
    const size = { width: 3, height: 3, samples: 16 };
    const middle = (holder: boolean) => {
      if (light.source.kind !== 'lamp' || !light.source.holder) throw new Error('nobody');
      const source = { ...light.source, holder: { ...light.source.holder, isDrawn: holder } };
      return traceLayers(world.stage, world.view, [source], size, 1)[0]?.[4 * 3 + 1];
    };
    expect(middle(false)).toBeGreaterThan(0);
    expect(middle(true)).toBe(0);
  });
});

describe('holderLuminance', () => {
  it('somebody whom the ray meets at one moment of two gives half of what they give at one of one', () => {
    const lamp = standing([0, 1.5, 0], [0, 1.5, -5], discEmitter(0.02));
    const pose = { position: [0, 1.2, 0.5] as Vec3, axis: [0, 0, -1] as Vec3 };
    const ray = { origin: [0, 1, 6] as Vec3, direction: [0, 0, -1] as Vec3 };
    const here: Vec3 = [0, 0, -2];
    const aside: Vec3 = [3, 0, -2];
    const seen = (feet: readonly Vec3[]) => {
      const taken = { poses: feet.map(() => pose), feet, clothes: 0.4, choice: 0 };
      const hits = holderAlong(taken, ray, 100);
      if (!hits) throw new Error('nobody is drawn');
      return { hits, luminance: holderLuminance(stageWith(), lamp, ray, hits, { u: 0.5, v: 0.5 }, taken) };
    };
    const once = seen([here]);
    expect(once.luminance).toBeGreaterThan(0);
    const twice = seen([here, aside]);
    expect(twice.hits[1]).toBeNull();
    expect(twice.luminance).toBeCloseTo(once.luminance / 2, 12);
    expect(seen([aside, aside]).luminance).toBe(0);
  });
});

describe('the shadow of whoever holds a lantern', () => {
  const lit = (holder: boolean, place: readonly [number, number]) => {
    const setup = onePassSetup({
      camera: {
        position: [place[0], place[1] - 0.01, 8],
        aim: [place[0], place[1], 0],
        focalLengthMm: 200,
        drawn: { holder },
      },
      lamps: [
        { kind: 'lantern', id: 'lantern', name: 'Lantern', output: { from: 'lumens', lumens: 100 }, diameterMm: 20 },
      ],
      // held 1.2 m up, aimed north: whoever holds it stands 0.45 m to the south
      pass: { lampId: 'lantern', waypoints: [{ position: [0, 0, 1.2], aim: [0, 3, 1.2] }] },
    });
    const { world, worldFrame, light } = onlyPassOf(setup);
    const picture = tracePicture(world, { ...worldFrame, lights: [light] }, { width: 3, height: 3, samples: 1 });
    return picture[4 * 3 + 1] as number;
  };
  it('lies where the straight way from the lamp meets the body, and nowhere else', () => {
    expect(lit(false, [0, -3])).toBeGreaterThan(0);
    expect(lit(true, [0, -3])).toBe(0);
    expect(lit(true, [0, 3])).toBe(lit(false, [0, 3]));
    // aside: the body is 0.25 m in radius 0.45 m off, so that its shadow opens to asin(0.25 / 0.45) = 33.7 degrees each side
    const aside = (degrees: number): [number, number] => [
      3 * Math.sin((degrees * Math.PI) / 180),
      -3 * Math.cos((degrees * Math.PI) / 180),
    ];
    expect(lit(true, aside(32.5))).toBe(0);
    expect(lit(true, aside(35))).toBeGreaterThan(0);
  });
});
