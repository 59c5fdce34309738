import { type HTMLAttributes, useState } from 'react';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { PictureMarks } from '../picture/PictureMarks.tsx';
import { Screen } from '../picture/Screen.tsx';
import type { OnScreenSize } from '../picture/use-screen-sizes.ts';
import { useApp } from '../state/app-store.ts';
import { maxSchemes, renameScheme } from '../state/edits/frame-edits.ts';
import { MiniPlan } from '../ui/MiniPlan.tsx';
import type { PlanView } from '../ui/plan-view.ts';
import { duplicateHere } from './duplicate-here.ts';
import { RenameField } from './RenameField.tsx';
import { TileNumbers } from './TileNumbers.tsx';

interface TileProps {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly isPresent: boolean;
  readonly planView: PlanView;
  readonly shown: readonly string[];
  readonly onSize: OnScreenSize;
  /** Moves it by one tile; null where it is the first or the last. */
  readonly onEarlier: (() => void) | null;
  readonly onLater: (() => void) | null;
  /** "moving" while it is dragged, "before" or "after" where another would come to stand. */
  readonly dragMark: 'moving' | 'before' | 'after' | null;
  readonly dragHandlers: HTMLAttributes<HTMLElement>;
}

/** One scheme: its picture, its plan and its numbers. */
export const Tile = (props: TileProps) => {
  const { setup, scheme, isPresent, planView, shown, onSize, onEarlier, onLater, dragMark, dragHandlers } = props;
  const { id, name } = scheme;
  const { edit, chooseScheme } = useApp.getState();
  const [isRenaming, setIsRenaming] = useState(false);
  const { widthMm, heightMm } = (scheme.camera ?? setup.camera).sensor;
  const rename = (next: string | null) => {
    if (next) edit((s) => renameScheme(s, id, next));
    setIsRenaming(false);
  };
  return (
    <article
      className="tile"
      aria-label={name}
      aria-current={isPresent || undefined}
      data-scheme={id}
      data-drag={dragMark ?? undefined}
    >
      <header className="tile-head" {...dragHandlers}>
        {isRenaming ? (
          <RenameField name={name} onDone={rename} />
        ) : (
          <button
            type="button"
            className="tile-name"
            title="Press: its plan and its lamps at the right. Double click or F2: another name. Drag: another place."
            onClick={() => chooseScheme(id)}
            onDoubleClick={() => setIsRenaming(true)}
            onKeyDown={(event) => event.key === 'F2' && setIsRenaming(true)}
          >
            {name}
          </button>
        )}
        <span className="tile-steps">
          {(
            [
              ['earlier', '←', onEarlier],
              ['later', '→', onLater],
            ] as const
          ).map(([step, arrow, move]) => (
            <button
              key={step}
              type="button"
              data-step={step}
              disabled={!move}
              aria-label={`${name} ${step}`}
              title={step}
              onClick={move ?? undefined}
            >
              {arrow}
            </button>
          ))}
          <button
            type="button"
            disabled={setup.schemes.length >= maxSchemes}
            aria-label={`Duplicate ${name}`}
            title="duplicate"
            onClick={() => duplicateHere(id)}
          >
            <svg viewBox="0 0 14 14" width={13} height={13} aria-hidden="true">
              <path d="M4.5 4.5H13V13H4.5ZM1 9.5V1H9.5" />
            </svg>
          </button>
        </span>
      </header>
      <div className="tile-picture" style={{ aspectRatio: widthMm / heightMm }}>
        <Screen name={`tile/${id}`} label={`Picture: ${name}`} onSize={onSize} />
        <PictureMarks schemeId={id} />
      </div>
      <div className="tile-foot">
        <div className="tile-below">
          <MiniPlan setup={setup} scheme={scheme} view={planView} sizePixels={112} />
          <TileNumbers scheme={scheme} shown={shown} />
        </div>
      </div>
    </article>
  );
};
