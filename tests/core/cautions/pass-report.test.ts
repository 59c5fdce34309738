import { describe, expect, it } from 'vitest';
import { reportPass } from '../../../core/cautions/pass-report.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { wallLitBy } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';

const setup = onePassSetup(wallLitBy(6, 1));
const scheme = setup.schemes[0] as Scheme;

describe('reportPass', () => {
  it('reads a pass as the report of its scheme does', () => {
    const alone = reportPass(setup, scheme, 'frame', 'pass');
    const [read] = reportScheme(setup, scheme).frames[0]?.passes ?? [];
    expect(read).toMatchObject(alone?.reading ?? { passId: 'none' });
    expect(alone?.cautions.map(({ code, frameId }) => [code, frameId])).toContainEqual(['burnt', 'frame']);
  });

  it('has nothing of a pass or a frame that is not there', () => {
    expect(reportPass(setup, scheme, 'frame', 'none')).toBeNull();
    expect(reportPass(setup, scheme, 'none', 'pass')).toBeNull();
  });
});
