import type { CardRow } from '../../../core/card/card-row.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { Going, Verdict } from '../../../core/card/stop-rule-steps.ts';
import { goingOf, runOf } from '../../../core/card/tonight.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { editTook } from '../state/edit-took.ts';
import { addRun } from '../state/edits/night-edits.ts';
import { localText } from '../state/local-text.ts';
import { changeWords } from './change-words.ts';
import { nightUnderWay } from './night-under-way.ts';

interface Judged {
  /** False where the log takes no more. */
  readonly isKept: boolean;
  /** What comes of it, or why it is not kept. */
  readonly words: string;
}

/** Writes down how a pass was gone and how it came out. */
export const judgePass = (card: FieldCard, row: CardRow, scheme: Scheme, going: Going, verdict: Verdict): Judged => {
  const now = new Date();
  const run = runOf(card, row, going, verdict, localText(now));
  const isKept = editTook((s) => addRun(s, nightUnderWay(s.nights, scheme.id, now)?.id ?? null, scheme, run));
  const { history, notice, tell } = useApp.getState();
  if (!isKept) {
    // it is said where the pass is, not over the page
    tell(null);
    return { isKept, words: notice?.text ?? 'This was not noted.' };
  }
  const after = nightUnderWay(history.present.nights, scheme.id, now);
  return { isKept, words: changeWords(card, row, going, verdict, goingOf(card, row, after)) };
};
