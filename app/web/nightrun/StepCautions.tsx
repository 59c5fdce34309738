import { stepCautions } from '../../../core/card/caution-lines.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { RunStep } from '../../../core/card/run-steps.ts';
import { CautionMark } from '../ui/CautionMark.tsx';

/** What to mind at a step, before the shutter opens: the dangers and warnings of the card. */
export const StepCautions = ({ card, step }: { readonly card: FieldCard; readonly step: RunStep }) => {
  const cautions = stepCautions(card, step);
  if (cautions.length === 0) return null;
  return (
    <ul className="run-cautions" aria-label="Cautions">
      {cautions.map(({ severity, word, text }) => (
        <li key={text}>
          <CautionMark severity={severity} /> <b>{word}</b> {text}
        </li>
      ))}
    </ul>
  );
};
