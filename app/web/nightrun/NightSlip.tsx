import { useId, useState } from 'react';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { Night } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { dayWords, noteNight } from '../state/edits/night-edits.ts';
import { goneWords, secondsWords, verdictWords } from './run-words.ts';

const photoWords = ({ name, aperture, seconds, iso, focalLengthMm, overStops }: Night['photos'][number]): string =>
  [
    name,
    focalLengthMm !== null && `${focalLengthMm} mm`,
    aperture !== null && `f/${aperture}`,
    seconds !== null && `${seconds} s`,
    iso !== null && `ISO ${iso}`,
    overStops !== null && `${overStops > 0 ? '+' : ''}${overStops.toFixed(1)} stops to the prediction`,
  ]
    .filter(Boolean)
    .join(' · ');

/** Where the focus goes for a night. */
export const nightHeadingId = ({ id }: Pick<Night, 'id'>): string => `heading-${id}`;

interface NightSlipProps {
  readonly night: Night;
  /** Of its scheme, where that is at hand. */
  readonly card: FieldCard | null;
  readonly onStart: () => void;
  readonly onDelete: () => void;
}

/** One night: what was done, what to remember of it, and how to go on from it. */
export const NightSlip = ({ night, card, onStart, onDelete }: NightSlipProps) => {
  const id = useId();
  const { edit } = useApp.getState();
  const [draft, setDraft] = useState<string | null>(null);
  const write = (text: string) => {
    setDraft(text);
    edit((s) => noteNight(s, night.id, text), `note ${night.id}`);
  };
  return (
    <section className="night-slip" aria-labelledby={nightHeadingId(night)}>
      <h3 id={nightHeadingId(night)} tabIndex={-1}>
        {dayWords(night.startedAt)} {night.startedAt.slice(0, 4)}, {night.startedAt.slice(11, 16)} · {night.schemeName}
      </h3>
      <ol>
        {night.runs.map((run, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a log, which only grows at its end
          <li key={i}>
            {run.at.slice(11, 16)} · {run.frameName} · {run.passName} · {secondsWords(run.seconds)}
            {run.strokes > 1 && ` in ${run.strokes} strokes`}
            {[goneWords(card, run)].filter(Boolean).map((words) => ` · ${words}`)} · <b>{verdictWords[run.verdict]}</b>
          </li>
        ))}
      </ol>
      {night.photos.length > 0 && (
        <ul className="quiet" aria-label="Photos">
          {night.photos.map((photo, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: files may have the same name
            <li key={i}>{photoWords(photo)}</li>
          ))}
        </ul>
      )}
      <label htmlFor={`${id}-note`}>Notes</label>
      <textarea
        id={`${id}-note`}
        rows={3}
        maxLength={2000}
        value={draft ?? night.note}
        data-draft={draft !== null}
        onChange={({ currentTarget }) => write(currentTarget.value)}
        onBlur={() => setDraft(null)}
      />
      <div className="night-ends">
        <button type="button" onClick={onStart}>
          Start from it
        </button>
        <button type="button" onClick={onDelete}>
          Delete
        </button>
      </div>
    </section>
  );
};
