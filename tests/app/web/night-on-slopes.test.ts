import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { addRun, schemeFromNight } from '../../../app/web/state/edits/night-edits.ts';
import { cardData } from '../../../core/card/card-data.ts';
import { heightOverGround } from '../../../core/card/card-stand.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import { movedStand } from '../../../core/card/moved-stand.ts';
import type { Going } from '../../../core/card/stop-rule-steps.ts';
import { runOf } from '../../../core/card/tonight.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Night, Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';

type Waypoint = Pass['waypoints'][number];

const passOf = (scheme: Scheme, passId: string, frameId: string): Pass =>
  scheme.frames.find(({ id }) => id === frameId)?.passes.find(({ id }) => id === passId) as Pass;

/** The heights that the phone tells of a scheme's passes gone so, and those that the scheme made of them has. */
const heightsOf = (setup: Setup, scheme: Scheme, card: FieldCard, moved: Omit<Going, 'seconds'>) => {
  const going = { seconds: 2, ...moved };
  const ran = card.rows.reduce(
    (s, row) => addRun(s, s.nights[0]?.id ?? null, scheme, runOf(card, row, going, 'good', '2026-10-12T22:30:00')),
    { ...setup, nights: [] } as Setup,
  );
  const { setup: next, schemeId } = schemeFromNight(ran, ran.nights[0] as Night, card.mark.place);
  expect(validateSetup(structuredClone(next)).schemes).toEqual(next.schemes);
  const made = next.schemes.find(({ id }) => id === schemeId) as Scheme;
  const { stage } = buildWorld(next, made);
  return card.rows.map((row) => ({
    told: movedStand(card, row.start, going).heightMetres,
    has: heightOverGround(stage, (passOf(made, row.passId, row.frameId).waypoints[0] as Waypoint).position),
  }));
};

describe('a scheme from a night on sloping ground', () => {
  it.each(['tent-on-a-ridge', 'natural-arch', 'lone-tree'])(
    '%s: lamps are as high over what lies under them as the phone said (1 mm)',
    (name) => {
      const setup = parseSetup(readFileSync(`assets/setups/${name}.json`, 'utf8'));
      const scheme = setup.schemes[0] as Scheme;
      const card = cardData(setup, scheme, reportScheme(setup, scheme));
      for (const going of [
        { distanceTimes: 1, hoursMoved: 0, heightTimes: 0.5, levelTimes: 1 },
        { distanceTimes: 1, hoursMoved: -1, heightTimes: 0.5, levelTimes: 1 },
        { distanceTimes: Math.SQRT2, hoursMoved: 1, heightTimes: 1, levelTimes: 1 },
      ]) {
        const heights = heightsOf(setup, scheme, card, going);
        expect(heights.length).toBeGreaterThan(0);
        for (const { told, has } of heights)
          expect(Math.abs(has - told), JSON.stringify({ going, told, has })).toBeLessThan(0.001);
      }
    },
  );
});
