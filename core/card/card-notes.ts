import type { Severity } from '../cautions/caution.ts';
import { limits } from '../cautions/limits.ts';
import type { SchemeReport } from '../cautions/setup-report.ts';
import type { Scheme, Setup } from '../setup/schema/setup.ts';
import { exactSeconds } from '../units/third-stops.ts';
import { burnShort } from './burn-short.ts';
import type { CardRow } from './card-row.ts';
import { cautionShorts } from './caution-shorts.ts';
import type { CardCaution, CardSight, StopRule } from './field-card.ts';

/** Common practice, no published source; stepping back by the root of two halves the light (inverse square law). */
export const stopRules: readonly StopRule[] = [
  { fault: 'Too bright', remedy: 'halve the count, or stand 1.4 times as far from what it lights' },
  { fault: 'Too dark', remedy: 'double the count' },
  { fault: 'Flat', remedy: 'lower the lamp; if it stays so, move one hour round the clock' },
];

/** Cautions that are commonly given, in order of weight; local rules and qualified people come before any card. */
export const safetyLines: readonly string[] = [
  'Local rules and whoever owns the land decide: ask before you go.',
  'Never light eyes, drivers, aircraft, roosts or nests.',
  'Learn the footing by day. Go with someone, tell someone, carry a spare lamp.',
  'Touch no old or carved surface. Stop before fingers go numb.',
];

/** Where not to stand, and how long one may: a body begins to register past a tenth of the exposure at one place. */
export const cardSight = (setup: Setup, { frames }: Scheme, rows: readonly CardRow[]): CardSight => ({
  stays: frames.flatMap(({ seconds, passes }, f) =>
    passes.length > 0 ? [{ frameNumber: f + 1, seconds: exactSeconds(seconds) * limits.personShare }] : [],
  ),
  seenRows: rows.flatMap(({ number, seenSeconds }) => (seenSeconds > 0 ? [{ number, seconds: seenSeconds }] : [])),
  hazardNames: [...new Set(setup.hazards.map(({ name }) => name))],
});

const weight: Readonly<Record<Severity, number>> = { danger: 0, warning: 1, note: 2 };

/** The cautions of a scheme, dangers first, each with its frame and row. */
export const cardCautions = ({ cautions }: SchemeReport, { frames }: Scheme, rows: readonly CardRow[]): CardCaution[] =>
  cautions
    .map((caution): CardCaution => {
      const { code, severity, message, frameId, passId } = caution;
      const place = frames.findIndex(({ id }) => id === frameId);
      const row = rows.find((each) => each.frameId === frameId && each.passId === passId);
      const short = (code === 'burnt' && row && burnShort(caution, row)) || (cautionShorts[code] ?? message);
      const frameNumber = place < 0 ? null : place + 1;
      return { code, severity, message, short, frameNumber, rowNumber: row?.number ?? null };
    })
    .sort((a, b) => weight[a.severity] - weight[b.severity]);
