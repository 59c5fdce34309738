import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tileWords } from '../../../app/web/compare/tile-rows.ts';
import { frameIdsShown, framesShown } from '../../../app/web/state/frames-shown.ts';
import { type FrameReport, reportScheme, type SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const side = stones.schemes[0] as Scheme;
const report = reportScheme(stones, side);
type Patch = PassReading['relief']['patch'];

/** The stones with a patch, whose numbers are made up; `fill`: with a second pass. */
const rowsOf = (keyPatch: Patch, framePatch: FrameReport['patch'], fill: boolean) => {
  const patch = { corners: [] } as unknown as NonNullable<typeof stones.patch>;
  const frames = report.frames.map((frame): FrameReport => {
    const passes = frame.passes.flatMap((pass) => {
      const key = { ...pass, relief: { ...pass.relief, patch: keyPatch } };
      const second = { ...pass, passId: 'fill', relief: { ...pass.relief, patch: null } };
      return fill ? [key, second] : [key];
    });
    return { ...frame, passes, patch: framePatch };
  });
  const read: SchemeReport = { ...report, frames };
  const { rows } = tileWords({ ...stones, patch }, side, read, ['painted']);
  return Object.fromEntries(rows.map(({ label, value, sense }) => [label, `${value}|${sense}`]));
};

describe('the row of relief', () => {
  it('has contrast and shadowed share of the key alone; all light of the frame stands beside where there are more passes', () => {
    const rows = rowsOf({ rmsContrast: 0.61, shadowedShare: 0.25 }, { rmsContrast: 0.2 }, true);
    expect(rows).toMatchObject({ Patch: '0.61 · 25 %|contrast · in shadow', 'All light': '0.20|contrast' });
    expect(rowsOf({ rmsContrast: 0.61, shadowedShare: 0.25 }, { rmsContrast: 0.2 }, false)).not.toHaveProperty(
      'All light',
    );
  });

  it('with a patch it never falls back to raking over the ground: no light on it, or it is not seen', () => {
    expect(rowsOf(null, { rmsContrast: 0.2 }, false)['Patch']).toBe('|no light on the patch');
    expect(rowsOf(null, null, true)).toMatchObject({
      Patch: '|patch dark or not seen',
      'All light': '|patch dark or not seen',
    });
  });

  it('without a patch: how the key rakes the ground', () => {
    const { rows } = tileWords({ ...stones, patch: null }, side, report, ['painted']);
    expect(rows.find(({ label }) => label === 'Raking')?.value).toMatch(/^[\d.]+°$/);
    expect(rows.some(({ label }) => label === 'All light')).toBe(false);
  });
});

describe('frames that a picture shows', () => {
  const [sky, painted] = side.frames as [Scheme['frames'][number], Scheme['frames'][number]];
  const blended: Scheme = {
    ...side,
    blend: {
      mode: 'lighten',
      frames: [
        { frameId: sky.id, weight: 0.5, where: 'everything', subjectId: null, featherPixels: 0 },
        { frameId: sky.id, weight: 2, where: 'everything', subjectId: null, featherPixels: 0 },
      ],
    },
  };

  it('the like of the frame shown alone, at full weight, by id or else by purpose', () => {
    const whole = { frame: painted, weight: 1, where: 'everything', subjectId: null, featherPixels: 0 };
    expect(framesShown(side, painted)).toEqual([whole]);
    expect(framesShown(side, { ...painted, id: 'elsewhere' })).toEqual([whole]);
  });

  it('else those of the blend with their weights, each named once; all of them where the blend names none', () => {
    expect(framesShown(blended, null).map(({ weight }) => weight)).toEqual([0.5, 2]);
    expect(frameIdsShown(blended, null)).toEqual([sky.id]);
    expect(frameIdsShown(side, null)).toEqual([sky.id, painted.id]);
    // a frame that has no like here shows the blend too
    expect(frameIdsShown(blended, { ...painted, id: 'elsewhere', purpose: 'land' })).toEqual([sky.id]);
  });
});
