// @vitest-environment happy-dom
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { DifferenceView } from '../../../app/web/compare/DifferenceView.tsx';
import { bandOf } from '../../../app/web/render/stops-bands.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

describe('the difference of two schemes', () => {
  it('says what its plain grey means: two that are alike show nothing else', () => {
    const setup = onePassSetup({
      camera: { position: [0, 0, 1], aim: [0, 8, 1] },
      pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
    });
    const light = { setup, scheme: setup.schemes[0] as Setup['schemes'][number], isUnlit: false };
    const side = (id: string) => ({ id, name: id, light });
    const page = renderToStaticMarkup(<DifferenceView pair={{ a: side('one'), b: side('two'), options: [] }} />);
    expect(page).toContain('Plain grey: less than half a stop apart, or dark in both.');
    // that is what the map draws as its plain band
    expect([-0.51, -0.49, 0, 0.49, 0.51].map(bandOf)).toEqual([-1, 0, 0, 0, 1].map((band) => expect.closeTo(band, 9)));
  });
});
