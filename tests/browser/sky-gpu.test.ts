import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import { launch, leave, openPage } from './browser.ts';
import { onBoth } from './on-both.ts';
import { differences, percentile } from './picture-differences.ts';

/** What is changed of a setup in its file. */
interface Document {
  readonly place: object;
  readonly camera: object;
  readonly bounces?: number;
  readonly schemes: readonly { readonly id: string; readonly frames: readonly { readonly id: string }[] }[];
}
const read = (name: string): Document => JSON.parse(readFileSync(`assets/setups/${name}.json`, 'utf8'));
const stones = read('three-stones');
const jetty = read('timber-jetty');

/** A half moon, a town and the evening of an invented viewpoint in the south. */
const hour = (document: Document, place: object): Document => ({
  ...document,
  place: {
    ...document.place,
    latitudeDegrees: -33,
    longitudeDegrees: 149,
    localTime: '2026-08-20T20:30',
    timeZone: 'Australia/Sydney',
    northDegrees: 30,
    sky: { zenithMagnitude: 21.5 },
    glowDomes: [{ bearingDegrees: 40, widthDegrees: 12, luminanceAt10DegreesCdM2: 0.01 }],
    ...place,
  },
});

/** Exposed for moonlight, dusk or so: nothing must be full, or both sides are alike there. */
const exposed = (document: Document, aperture: number, iso: number): Document => ({
  ...document,
  schemes: document.schemes.map((scheme) => ({
    ...scheme,
    frames: scheme.frames.map((frame) => ({ ...frame, aperture, iso })),
  })),
});

/** Seen from above: no sky, whose light is the same by making. */
const fromAbove = (document: Document): Document => ({
  ...document,
  camera: { ...document.camera, position: [0, -3, 6], aim: [0, 5, 0] },
});

/** The jetty walked along with a lamp, in haze. */
const walkedInHaze: Document = {
  ...hour(jetty, { hazeVisibilityKm: 0.4 }),
  bounces: 1,
  schemes: jetty.schemes.filter(({ id }) => id === 'walk'),
};

const scenes: [string, string, Document][] = [
  ['land under half moon and town', 'sky', fromAbove(exposed(hour(stones, {}), 4, 800))],
  ['land at dusk', 'sky', fromAbove(exposed(hour(stones, { localTime: '2026-08-20T18:10' }), 16, 100))],
  ['half moon and a town', 'sky', exposed(hour(stones, {}), 4, 800)],
  ['dusk', 'sky', exposed(hour(stones, { localTime: '2026-08-20T18:10' }), 16, 50)],
  ['lamps in haze under the moon', 'painted', hour(stones, { hazeVisibilityKm: 0.4 })],
  ['lamps in haze under a plain sky', 'painted', { ...stones, place: { ...stones.place, hazeVisibilityKm: 0.4 } }],
  ['land in haze under half moon', 'sky', fromAbove(exposed(hour(stones, { hazeVisibilityKm: 0.4 }), 4, 800))],
  ['a lamp walked in haze, its holder and bounced light', 'painted', walkedInHaze],
  ['still water in haze', '', exposed(hour(jetty, { hazeVisibilityKm: 0.4 }), 4, 400)],
  ['still water', '', exposed(hour(jetty, {}), 4, 400)],
];

describe('sky and haze, GPU against the CPU reference: median <= 2 %, 95th percentile <= 8 % over 1 % of the maximum', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => leave(browser));

  it.each(scenes)('%s', async (name, frameId, document) => {
    const text = JSON.stringify(document);
    const scheme = parseSetup(text).schemes[0];
    if (!scheme) throw new Error('no scheme');
    const { gpu, cpu } = await onBoth(
      page,
      { text, schemeId: scheme.id, frameId: frameId || (scheme.frames[0]?.id ?? '') },
      { width: 64, height: 42, samples: 8 },
    );
    const sorted = differences(gpu, cpu);
    const [median, high] = [percentile(sorted, 0.5), percentile(sorted, 0.95)];
    console.log(
      `${name}: ${sorted.length} values, median ${(100 * median).toFixed(4)} %, 95th ${(100 * high).toFixed(4)} %`,
    );
    expect(sorted.length).toBeGreaterThan(300);
    expect(cpu.filter((v) => v >= 7.7).length).toBeLessThan(0.02 * cpu.length);
    expect(median).toBeLessThanOrEqual(0.02);
    expect(high).toBeLessThanOrEqual(0.08);
  });
});
