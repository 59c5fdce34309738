import { describe, expect, it } from 'vitest';
import type { ReportRequest } from '../../../app/web/workers/report-messages.ts';
import { setupKeeper, withoutKnownFiles } from '../../../app/web/workers/request-parts.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { everyKindSetup } from '../../browser/every-kind.ts';

const setup = parseSetup(JSON.stringify(everyKindSetup()));

/** What comes out of a message: never the objects that went in. */
const posted = (present: Setup, sent: Setup | null): ReportRequest =>
  structuredClone({ id: 1, stageKey: 1, schemeIds: ['s'], ...withoutKnownFiles(present, sent) });

describe('requests to the worker', () => {
  it('a setup arrives as it was', () => {
    expect(setupKeeper()(posted(setup, null))).toEqual(setup);
  });

  it('beams that have not changed are not sent again, and are the same objects to the worker', () => {
    const keep = setupKeeper();
    const one = keep(posted(setup, null));
    const renamed = { ...setup, name: 'Renamed' };
    const request = posted(renamed, setup);
    expect(request.measuredBeams).toBeNull();
    expect(JSON.stringify(request)).not.toContain('candela":[[');
    const two = keep(request);
    expect(two).toEqual(renamed);
    expect(two.measuredBeams).toBe(one.measuredBeams);
    expect(two.subjects).toBe(one.subjects);
  });

  it('beams that have changed are, even when none is left', () => {
    const keep = setupKeeper();
    keep(posted(setup, null));
    const fewer = { ...setup, measuredBeams: setup.measuredBeams.slice(1) };
    expect(keep(posted(fewer, setup)).measuredBeams).toEqual(fewer.measuredBeams);
    expect(keep(posted({ ...setup, measuredBeams: [] }, fewer)).measuredBeams).toEqual([]);
  });

  it('another stage is another object', () => {
    const keep = setupKeeper();
    const one = keep(posted(setup, null));
    const two = keep({ ...posted(setup, setup), stageKey: 2 });
    expect(two.subjects).not.toBe(one.subjects);
    expect(two.measuredBeams).toBe(one.measuredBeams);
  });
});
