import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { maxSchemes, removeScheme, renameScheme } from '../state/edits/frame-edits.ts';
import { duplicateHere } from './duplicate-here.ts';
import { RenameField } from './RenameField.tsx';

/** Scrolls a box, and nothing round it, so far that what lies in it is seen. */
const reveal = (tab: Element, box: Element) => {
  const [inner, outer] = [tab.getBoundingClientRect(), box.getBoundingClientRect()];
  box.scrollLeft += Math.min(inner.left - outer.left, 0) + Math.max(inner.right - outer.right, 0);
  box.scrollTop += Math.min(inner.top - outer.top, 0) + Math.max(inner.bottom - outer.bottom, 0);
};

/** The schemes as tabs: left and right arrows go through them, a double click or F2 renames. */
export const SchemeTabs = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const { chooseScheme, edit } = useApp.getState();
  const [renaming, setRenaming] = useState<string | null>(null);
  const row = useRef<HTMLDivElement>(null);
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const tab = document.getElementById(`scheme-${scheme.id}`);
    // the names scroll on a wide page, the whole row on a phone
    for (const box of [list.current, row.current]) if (tab && box) reveal(tab, box);
  }, [scheme.id]);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'F2') setRenaming(scheme.id);
    const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    if (step === 0 || renaming) return;
    const at = setup.schemes.findIndex(({ id }) => id === scheme.id);
    const next = setup.schemes[(at + step + setup.schemes.length) % setup.schemes.length];
    if (!next) return;
    event.preventDefault();
    chooseScheme(next.id);
    document.getElementById(`scheme-${next.id}`)?.focus();
  };
  const rename = (id: string) => (name: string | null) => {
    if (name) edit((s) => renameScheme(s, id, name));
    setRenaming(null);
  };
  return (
    <div className="schemes" ref={row}>
      <div ref={list} role="tablist" aria-label="Schemes" onKeyDown={onKeyDown}>
        {setup.schemes.map(({ id, name }) =>
          renaming === id ? (
            <RenameField key={id} name={name} onDone={rename(id)} />
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
      <button type="button" onClick={() => duplicateHere(scheme.id)} disabled={setup.schemes.length >= maxSchemes}>
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
