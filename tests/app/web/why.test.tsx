// @vitest-environment happy-dom
import { act } from 'react';
import { afterEach, describe, expect, it } from 'vitest';
import { PassNumbers } from '../../../app/web/inspector/PassNumbers.tsx';
import { Cautions } from '../../../app/web/readings/Cautions.tsx';
import { useApp } from '../../../app/web/state/app-store.ts';
import { useReports } from '../../../app/web/state/reports.ts';
import { fetchAbout } from '../../../app/web/ui/about-texts.ts';
import { reportSetup } from '../../../core/cautions/setup-report.ts';
import { validateSetup } from '../../../core/setup/parse-setup.ts';
import { onePassSetup } from '../../core/support/scenes.ts';
import { mounted } from './nightrun/mounted.tsx';

/** The lamp beside the camera: flat; a patch, a moon and a subject, so that there are many rows. */
const setup = validateSetup({
  ...onePassSetup({
    camera: { position: [0, 0, 1], aim: [0, 8, 1] },
    pass: { waypoints: [{ time: 0, position: [1, 0, 1], aim: [0, 8, 1] }] },
    subjects: [
      {
        id: 'stone',
        name: 'Stone',
        position: [0, 8, 0],
        parts: [{ kind: 'box', widthMetres: 1, depthMetres: 1, heightMetres: 2 }],
      },
    ],
    place: { moonlight: { altitudeDegrees: 30, bearingDegrees: 90, illuminanceLux: 0.1 } },
  }),
});

/** Opens every text in turn, and gives what each says. */
const openAll = async (): Promise<readonly string[]> => {
  await fetchAbout();
  for (const button of document.querySelectorAll<HTMLButtonElement>('button.why'))
    await act(async () => {
      button.click();
      await new Promise((done) => setTimeout(done, 0));
    });
  return [...document.querySelectorAll('.why-text')].map(({ textContent }) => textContent ?? '');
};

describe('what stands behind the numbers of a pass', () => {
  afterEach(() => useReports.setState({ byScheme: {} }));

  it('every row has a name that unfolds what it says, a rule and a source', async () => {
    const [pass] = reportSetup(setup).schemes[0]?.frames[0]?.passes ?? [];
    if (!pass) throw new Error('no pass was read');
    const page = mounted(<PassNumbers reading={pass} setup={setup} />);
    const rows = [...document.querySelectorAll('dt')];
    expect(rows.length).toBeGreaterThan(11);
    expect(rows.filter((row) => !row.querySelector('button.why')).map(({ textContent }) => textContent)).toEqual([]);
    const texts = await openAll();
    expect(texts.length).toBe(rows.length);
    expect(texts.filter((text) => !/\..+\..*Source: .{5,}\.$/.test(text))).toEqual([]);
    page.press('Elevation');
    expect(document.querySelectorAll('.why-text').length).toBe(rows.length - 1);
    page.leave();
  });

  it('a caution says why, with the limit that it is held to', async () => {
    useApp.setState(({ history }) => ({
      history: { ...history, present: setup },
      schemeId: setup.schemes[0]?.id ?? '',
    }));
    const [report] = reportSetup(setup).schemes;
    if (!report) throw new Error('no report');
    useReports.setState({ byScheme: { [report.id]: report } });
    const page = mounted(<Cautions />);
    expect(document.querySelector('[data-code=near-axis]')).not.toBeNull();
    const names = [...document.querySelectorAll('button.why')].map((button) => button.getAttribute('aria-label'));
    expect(names).toContain('Why: flat');
    expect(names.filter((name) => !/^Why: [a-z ]{4,}$/.test(name ?? ''))).toEqual([]);
    const texts = await openAll();
    // cautions are read out as they come; a text that was asked for is not
    expect(
      [...document.querySelectorAll('.why-text')].map((text) => text.closest('[aria-live]')?.getAttribute('aria-live')),
    ).toEqual(texts.map(() => 'off'));
    expect(document.querySelector('[data-code]')?.closest('[aria-live]')?.getAttribute('aria-live')).toBe('polite');
    expect(texts.find((text) => text.includes('a danger under 20°, a note under 30°'))).toContain(
      'Common practice, no published source.',
    );
    page.leave();
  });
});
