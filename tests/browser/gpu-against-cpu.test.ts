import { readdirSync, readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { fullEntry as everywhere } from '../../core/setup/blend-entries.ts';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import { traceBlend } from '../../core/trace/blend.ts';
import { developPicture } from '../../core/trace/picture.ts';
import { buildWorld } from '../../core/world/world.ts';
import { launch, leave, openPage } from './browser.ts';
import { everyKindSetup } from './every-kind.ts';
import type { Harness } from './harness/main.ts';
import { meanwhile, onBoth } from './on-both.ts';
import { differences, percentile } from './picture-differences.ts';

interface Size {
  readonly width: number;
  readonly height: number;
  readonly samples: number;
}
const fullSize: Size = { width: 96, height: 54, samples: 4 };
/** For the variants of every kind: smaller, since two bounces on the CPU take their time. */
const smallSize: Size = { width: 64, height: 36, samples: 4 };

describe('GPU layers against the CPU reference: median <= 2 %, 95th percentile <= 8 % over 1 % of the maximum', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => leave(browser));

  const compare = async (text: string, schemeId: string, frameId: string, fewest: number, size = fullSize) => {
    const { gpu, cpu } = await onBoth(page, { text, schemeId, frameId }, size);
    const sorted = differences(gpu, cpu);
    const [median, high] = [percentile(sorted, 0.5), percentile(sorted, 0.95)];
    console.log(
      `${schemeId} ${frameId}: ${sorted.length} values, median ${(100 * median).toFixed(4)} %, 95th ${(100 * high).toFixed(4)} %`,
    );
    expect(sorted.length).toBeGreaterThan(fewest);
    expect(median).toBeLessThanOrEqual(0.02);
    expect(high).toBeLessThanOrEqual(0.08);
  };

  for (const sample of ['three-stones', 'drystone-wall']) {
    const text = readFileSync(`assets/setups/${sample}.json`, 'utf8');
    for (const { id } of parseSetup(text).schemes)
      for (const frameId of ['painted', 'sky'])
        it(`${sample}, scheme ${id}, frame ${frameId}`, () => compare(text, id, frameId, 300));
  }

  for (const lesson of readdirSync('assets/setups').filter((file) => file.startsWith('lesson-'))) {
    const text = readFileSync(`assets/setups/${lesson}`, 'utf8');
    const scheme = parseSetup(text).schemes.at(-1);
    for (const { id } of scheme?.frames.filter(({ passes }) => passes.length > 0) ?? [])
      it(`${lesson}, scheme ${scheme?.id}, frame ${id}`, () => compare(text, scheme?.id ?? '', id, 300, smallSize));
  }

  const kinds = ['torch', 'flood', 'panel', 'lantern', 'tube', 'point', 'lobe', 'grid', 'measured', 'measured-point'];
  const others = ['dressed', 'moving', 'in-sight'];
  const variants = {
    // many lamps in one frame add up alike, whatever else is drawn: once is enough
    'direct light': { settings: {}, frames: [...kinds, ...others, 'sixteen'] },
    // most of the light has bounced here: a bounce that is missing or wrong on one side can't hide
    'two bounces in a white room': { settings: { bounces: 2, inRoom: true }, frames: [...kinds, ...others] },
    'one bounce through the open lens': {
      settings: { bounces: 1, drawn: { focusBlur: true } },
      frames: ['torch', 'tube', ...others],
    },
    // as few sensor pixels as may be, so that noise is not averaged away
    'open lens, fall-off and noise': {
      settings: {
        drawn: { focusBlur: true, vignetting: true, noise: true },
        sensor: { pixelsWide: 100, pixelsHigh: 100, fullWellElectrons: 5000 },
        iso: 6400,
      },
      frames: ['torch', 'panel', ...others],
    },
  };
  for (const [variant, { settings, frames }] of Object.entries(variants)) {
    const everyKind = JSON.stringify(everyKindSetup(settings));
    for (const frameId of frames)
      it(`every kind of part under moonlight, ${variant}, frame ${frameId}`, () =>
        compare(everyKind, 's', frameId, 400, variant === 'direct light' ? fullSize : smallSize));
  }

  it('a blend keeps the brighter of each channel: GPU blend = maximum of the two GPU frames (rel 1e-6)', async () => {
    const text = readFileSync('assets/setups/three-stones.json', 'utf8');
    const [sky, painted, blend] = await page.evaluate(
      async ([setup, w, h]) => {
        const { harness } = window as unknown as { harness: Harness };
        const frame = (id: string) => harness.picture(setup, 'side', id, w, h, 1);
        return [await frame('sky'), await frame('painted'), await harness.blend(setup, 'side', w, h, 1)] as const;
      },
      [text, 60, 40] as const,
    );
    expect(blend.length).toBe(60 * 40 * 3);
    let fromPainted = 0;
    blend.forEach((v, i) => {
      const [a, b] = [sky[i] as number, painted[i] as number];
      if (b > a) fromPainted++;
      expect(Math.abs(v - Math.max(a, b))).toBeLessThanOrEqual(1e-6 * Math.max(a, b, 1e-9));
    });
    expect(fromPainted).toBeGreaterThan(100);
  });

  // each way of blending, with masks from the scene: sky and ground apart, a subject, all of it; soft edges
  const subject = 'stone-2';
  const blends = {
    'lighten, sky and ground': {
      mode: 'lighten',
      frames: [
        { frameId: 'sky', where: 'sky', featherPixels: 200 },
        { frameId: 'painted', where: 'land', weight: 0.7, featherPixels: 200 },
      ],
    },
    'add, a subject over the sky frame': {
      mode: 'add',
      frames: [{ frameId: 'sky' }, { frameId: 'painted', where: 'subject', subjectId: subject, featherPixels: 60 }],
    },
    'average, everywhere and a subject': {
      mode: 'average',
      frames: [
        { frameId: 'painted', weight: 2 },
        { frameId: 'sky', where: 'subject', subjectId: subject, featherPixels: 400 },
      ],
    },
    'average, two parts alone': {
      mode: 'average',
      frames: [
        { frameId: 'painted', where: 'ground' },
        { frameId: 'sky', where: 'sky', weight: 0.5 },
      ],
    },
  };
  it.each(Object.entries(blends))('blend: %s', async (_, blend) => {
    const document = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
    for (const scheme of document.schemes) scheme.blend = blend;
    const setup = parseSetup(JSON.stringify(document));
    const scheme = setup.schemes.find(({ id }) => id === 'side');
    if (!scheme) throw new Error('no scheme');
    const size = { width: 96, height: 54, samples: 8 };
    const world = buildWorld(setup, scheme);
    const onCard = page.evaluate(
      ([text, w, h, s]) => (window as unknown as { harness: Harness }).harness.blend(text, 'side', w, h, s),
      [JSON.stringify(document), size.width, size.height, size.samples] as const,
    );
    const { gpu, cpu } = await meanwhile(onCard, () => traceBlend(world, scheme, setup.camera.sensor.pixelsWide, size));
    const sorted = differences(gpu, cpu);
    expect(sorted.length).toBeGreaterThan(300);
    expect(percentile(sorted, 0.5)).toBeLessThanOrEqual(0.02);
    expect(percentile(sorted, 0.95)).toBeLessThanOrEqual(0.08);
    // the masks do something: without them the blend is another
    const bare = {
      ...scheme,
      blend: {
        ...scheme.blend,
        frames: scheme.blend.frames.map(({ frameId, weight }) => ({ ...everywhere(frameId), weight })),
      },
    };
    const unmasked = traceBlend(world, bare, setup.camera.sensor.pixelsWide, size);
    expect(percentile(differences(gpu, unmasked), 0.95)).toBeGreaterThan(0.1);
  });

  it.each(['soft', 'plain'] as const)(
    'the develop shader and core’s %s response give the same byte (1 of 255) from black to far past saturation',
    async (response) => {
      const ratios = Array.from({ length: 200 }, (_, i) => (i < 100 ? i * 0.03 : 3 + (i - 100) * 0.08));
      const bytes = await page.evaluate(
        ([values, curve]) => (window as unknown as { harness: Harness }).harness.develop(values, curve),
        [ratios, response] as const,
      );
      const expected = developPicture(Float64Array.from(ratios), response);
      bytes.forEach((byte, i) => {
        expect(Math.abs(byte - (expected[i] as number)), `ratio ${ratios[i]}`).toBeLessThanOrEqual(1);
      });
      expect(bytes.at(-1)).toBe(255);
      expect(bytes[0]).toBe(0);
    },
  );
});
