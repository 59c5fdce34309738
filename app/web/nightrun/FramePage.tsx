import type { RefObject } from 'react';
import type { CardFrame, FieldCard } from '../../../core/card/field-card.ts';
import { ClockLine } from './ClockLine.tsx';
import type { RunState } from './run-clock.ts';
import { exposureWords, frameTitle, unlitWords } from './run-words.ts';
import { StepCautions } from './StepCautions.tsx';

interface FramePageProps {
  readonly card: FieldCard;
  readonly frame: CardFrame;
  readonly state: RunState | null;
  readonly heading: RefObject<HTMLHeadingElement | null>;
}

/** A shutter opening without a lamp. */
export const FramePage = ({ card, frame, state, heading }: FramePageProps) => (
  <section className="run-row" aria-label={frameTitle(card, frame)}>
    <h2 ref={heading} tabIndex={-1}>
      {frameTitle(card, frame)}: no lamp
    </h2>
    <StepCautions card={card} step={{ kind: 'frame', frame }} />
    <p>{exposureWords(card, frame)}</p>
    {state && (
      <p className="run-count" role="timer" aria-label="Shutter">
        <ClockLine state={state} strokes={1} />
      </p>
    )}
    <p className="quiet">{unlitWords(frame, state !== null && !state.isOver)}</p>
  </section>
);
