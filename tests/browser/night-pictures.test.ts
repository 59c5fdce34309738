import { readFileSync } from 'node:fs';
import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { projectPoint } from '../../core/camera/camera-view.ts';
import { apply } from '../../core/colour/matrix.ts';
import { add, scale, type Vec3 } from '../../core/geometry/vec.ts';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import type { Setup } from '../../core/setup/schema/setup.ts';
import { skyAt } from '../../core/sky/sky-at.ts';
import type { SkyState } from '../../core/sky/sky-state.ts';
import { skyInputOf } from '../../core/world/sky-of-place.ts';
import { buildWorld, type World } from '../../core/world/world.ts';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const sample = (name: string): Setup => parseSetup(readFileSync(`assets/setups/${name}.json`, 'utf8'));

/** A picture on the screen, and medians of its channels round places given as shares of its width and height. */
const seen = async (app: AppPage) => {
  const { data, width, height, channels } = decode(await app.page.locator('.picture canvas').screenshot());
  return ([x, y]: readonly [number, number], reach = 5): [number, number, number] => {
    const near = [0, 1, 2].map((c) => {
      const values: number[] = [];
      for (let dy = -reach; dy <= reach; dy++)
        for (let dx = -reach; dx <= reach; dx++) {
          const at = (Math.round(y * height + dy) * width + Math.round(x * width + dx)) * channels + c;
          if (data[at] !== undefined) values.push(data[at] as number);
        }
      return values.sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
    });
    return near as [number, number, number];
  };
};

const grey = ([r, g, b]: readonly [number, number, number]): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

describe('pictures of nights, kept to be looked at (.reports/screens/night-*.png)', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  const show = async (name: string, setup: Setup, frame: string) => {
    const app = await AppPage.open(browser, { samples: 2, width: 1440, height: 900 });
    await app.openText(`${name}.json`, JSON.stringify(setup));
    await app.page.getByRole('button', { name: frame, exact: true }).first().click();
    await app.settled();
    await app.keepScreenshot(`night-${name}`);
    const world: World = buildWorld(setup, setup.schemes[0] as Setup['schemes'][number]);
    const state = skyAt(skyInputOf(setup.place) as NonNullable<ReturnType<typeof skyInputOf>>);
    return { app, at: await seen(app), world, state };
  };

  /** Where a direction falls in the picture. */
  const placeOf = ({ view }: World, toward: Vec3): readonly [number, number] =>
    projectPoint(view, add(view.position, scale(toward, 1e6))) as readonly [number, number];
  const galactic = ({ worldFromGalactic }: SkyState, lDegrees: number, bDegrees: number): Vec3 => {
    const [l, b] = [(lDegrees * Math.PI) / 180, (bDegrees * Math.PI) / 180];
    return apply(worldFromGalactic, [Math.cos(b) * Math.cos(l), Math.cos(b) * Math.sin(l), Math.sin(b)]) as Vec3;
  };

  it('14 mm toward the core: its bright clouds stand out from the sky beside it, and from its dark rift', async () => {
    const arch = sample('natural-arch');
    const setup = {
      ...arch,
      camera: { ...arch.camera, focalLengthMm: 14, aim: [0, 30, 11] as [number, number, number] },
    };
    const { app, at, world, state } = await show('core', setup, 'Star frame');
    const cloud = grey(at(placeOf(world, galactic(state, 3, -4))));
    const beside = grey(at(placeOf(world, galactic(state, 3, -35))));
    const rift = grey(at(placeOf(world, galactic(state, 12, 3))));
    console.log(`core: cloud ${cloud}, beside ${beside}, rift ${rift}`);
    expect(cloud).toBeGreaterThan(1.1 * beside);
    expect(cloud).toBeGreaterThan(1.05 * rift);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('glow of a city behind a tree: warm and bright low down, and the tree dark before it', async () => {
    const { app, at } = await show('silhouette', sample('lone-tree'), 'Sky');
    const [low, high, trunk] = [at([0.12, 0.6]), at([0.12, 0.06]), at([0.49, 0.6], 2)];
    console.log(`silhouette: low ${low}, high ${high}, trunk ${trunk}`);
    expect(grey(low)).toBeGreaterThan(1.25 * grey(high));
    expect(low[0] / low[2]).toBeGreaterThan(1.2 * (high[0] / high[2]));
    expect(grey(trunk)).toBeLessThan(0.5 * grey(low));
    await app.close();
  });

  it('half moon over snow: lit snow far brighter than the wall that is turned away', async () => {
    const { app, at } = await show('half-moon', sample('bothy-in-snow'), 'Sky');
    const [snow, wall] = [at([0.3, 0.9]), at([0.34, 0.66], 9)];
    console.log(`half moon: snow ${snow}, wall ${wall}`);
    expect(grey(snow)).toBeGreaterThan(1.8 * grey(wall));
    await app.close();
  });

  it('blue hour over still water: blue above, and the lake shows it', async () => {
    const { app, at } = await show('blue-hour', sample('timber-jetty'), 'Blue hour, focus 5 m');
    const [above, low, water] = [at([0.2, 0.04]), at([0.3, 0.24], 3), at([0.37, 0.66], 3)];
    console.log(`blue hour: above ${above}, low ${low}, water ${water}`);
    expect(above[2]).toBeGreaterThan(1.3 * above[0]);
    expect(grey(low)).toBeGreaterThan(1.3 * grey(above));
    expect(water[2]).toBeGreaterThan(1.1 * water[0]);
    await app.close();
  });
});
