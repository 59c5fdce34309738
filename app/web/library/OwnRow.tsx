import { useId, useState } from 'react';
import type { SetupSummary } from '../storage/records.ts';
import { TextField } from '../ui/TextField.tsx';
import { summaryWords } from './kept-words.ts';
import { copyOwn, nameOwn, openOwn, removeOwn } from './own-actions.ts';

interface OwnRowProps {
  readonly summary: SetupSummary;
  readonly isOpen: boolean;
  readonly now: number;
  readonly close: () => void;
  /** Told when it is gone, so that the focus has somewhere to be. */
  readonly onRemoved: () => void;
}

/** One kept setup: pressed, it opens; what else can be done with it unfolds under it. */
export const OwnRow = ({ summary, isOpen, now, close, onRemoved }: OwnRowProps) => {
  const [isUnfolded, setIsUnfolded] = useState(false);
  const moreId = useId();
  const { key, name, thumbnail } = summary;
  return (
    <li className="own-row" data-own={name}>
      <div className="own-line">
        <button
          type="button"
          className="own-open"
          {...(isOpen ? { 'aria-current': true } : {})}
          onClick={() => {
            if (!isOpen) void openOwn(key);
            close();
          }}
        >
          {thumbnail ? <img src={thumbnail} alt="" width={72} height={48} /> : <span className="own-blank" />}
          <span>
            <span className="own-name">{name}</span>
            <span className="quiet own-words">
              {isOpen && 'on screen · '}
              {summaryWords(summary, now)}
            </span>
          </span>
        </button>
        <button
          type="button"
          className="own-more"
          aria-expanded={isUnfolded}
          aria-controls={moreId}
          aria-label={`More for ${name}`}
          onClick={() => setIsUnfolded(!isUnfolded)}
        >
          ⋯
        </button>
      </div>
      {isUnfolded && (
        <div id={moreId} className="own-tools">
          <TextField label={`Name of ${name}`} value={name} onChange={(typed) => nameOwn(key, typed)} />
          <button type="button" aria-label={`Duplicate ${name}`} onClick={() => void copyOwn(key)}>
            Duplicate
          </button>
          <button
            type="button"
            aria-label={`Delete ${name}`}
            onClick={() => {
              void removeOwn(summary);
              onRemoved();
            }}
          >
            Delete
          </button>
        </div>
      )}
    </li>
  );
};
