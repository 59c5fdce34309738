import { type KeyboardEvent, useState } from 'react';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { duplicateScheme, removeScheme, renameScheme } from '../state/edits/frame-edits.ts';

/** The schemes as tabs: left and right arrows go through them, a double click renames. */
export const SchemeTabs = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const { chooseScheme, edit } = useApp.getState();
  const [renaming, setRenaming] = useState<string | null>(null);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    if (step === 0 || renaming) return;
    const at = setup.schemes.findIndex(({ id }) => id === scheme.id);
    const next = setup.schemes[(at + step + setup.schemes.length) % setup.schemes.length];
    if (!next) return;
    event.preventDefault();
    chooseScheme(next.id);
    document.getElementById(`scheme-${next.id}`)?.focus();
  };
  const rename = (text: string) => {
    const name = text.trim().slice(0, 80);
    if (renaming && name) edit((s) => renameScheme(s, renaming, name));
    setRenaming(null);
  };
  const duplicate = () => {
    const copy = duplicateScheme(setup, scheme.id);
    edit(() => copy.setup);
    chooseScheme(copy.schemeId);
  };
  return (
    <div className="schemes">
      <div role="tablist" aria-label="Schemes" onKeyDown={onKeyDown}>
        {setup.schemes.map(({ id, name }) =>
          renaming === id ? (
            <input
              key={id}
              className="text"
              defaultValue={name}
              aria-label="Name of the scheme"
              maxLength={80}
              // biome-ignore lint/a11y/noAutofocus: the user has just asked to type here
              autoFocus
              onBlur={(event) => rename(event.currentTarget.value)}
              onKeyDown={(event) => {
                if (event.key === 'Enter') rename(event.currentTarget.value);
                if (event.key === 'Escape') setRenaming(null);
              }}
            />
          ) : (
            <button
              key={id}
              id={`scheme-${id}`}
              type="button"
              role="tab"
              aria-selected={id === scheme.id}
              tabIndex={id === scheme.id ? 0 : -1}
              onClick={() => chooseScheme(id)}
              onDoubleClick={() => setRenaming(id)}
            >
              {name}
            </button>
          ),
        )}
      </div>
      <button type="button" onClick={duplicate} disabled={setup.schemes.length >= 24}>
        Duplicate
      </button>
      {setup.schemes.length > 1 && (
        <button type="button" onClick={() => edit((s) => removeScheme(s, scheme.id))}>
          Remove
        </button>
      )}
    </div>
  );
};
