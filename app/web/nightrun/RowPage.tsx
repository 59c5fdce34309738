import type { RefObject } from 'react';
import type { CardRow } from '../../../core/card/card-row.ts';
import { countText, levelText, onText, walkText } from '../../../core/card/card-words.ts';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { Going } from '../../../core/card/stop-rule-steps.ts';
import { ClockLine } from './ClockLine.tsx';
import type { RunState } from './run-clock.ts';
import { frameWords, levelWords, secondsWords, standWords, troubleWords } from './run-words.ts';
import { StepCautions } from './StepCautions.tsx';

interface RowPageProps {
  readonly card: FieldCard;
  readonly row: CardRow;
  readonly going: Going;
  readonly state: RunState | null;
  readonly heading: RefObject<HTMLHeadingElement | null>;
}

/** One pass, as large as a screen in the hand can have it. */
export const RowPage = ({ card, row, going, state, heading }: RowPageProps) => {
  const [frame, settings] = frameWords(card, row);
  const trouble = troubleWords(card, row, going);
  const walk = walkText(row);
  const isMoved = going.distanceTimes !== 1 || going.hoursMoved !== 0;
  const planned = [
    ...(going.seconds === row.countSeconds ? [] : [secondsWords(row.countSeconds)]),
    ...(going.levelTimes === 1 ? [] : [levelText(row.levelPercent)]),
  ];
  return (
    <section className="run-row" aria-label={`Pass ${row.number}`}>
      <p className="run-frame">
        {frame}
        <span>{settings}</span>
      </p>
      <h2 ref={heading} tabIndex={-1}>
        Pass <b className="run-number">{row.number}</b> of {card.rows.length} · {row.name}
      </h2>
      <StepCautions card={card} step={{ kind: 'pass', row }} />
      <p>{standWords(card, row, going)}</p>
      {trouble && <p>{trouble}</p>}
      {walk && (
        <p>
          Walk there{isMoved && ', as planned'}: {walk}
        </p>
      )}
      <p>
        aim: {row.aimWord} · {row.lampName} {levelWords(row, going)} · gel: {row.gelWord}
      </p>
      <p className="run-count" role="timer" aria-label="Count">
        {state ? (
          <ClockLine state={state} strokes={row.strokes} />
        ) : (
          <>
            COUNT <b className="run-seconds">{row.staysOn ? countText(row) : secondsWords(going.seconds)}</b>
            {row.strokes > 1 && ` · ${row.strokes} strokes`}
          </>
        )}
      </p>
      <p className="quiet">
        Lamp {onText(row)}
        {planned.length > 0 && ` · planned ${planned.join(', ')}`}
      </p>
    </section>
  );
};
