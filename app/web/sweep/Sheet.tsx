import { type KeyboardEvent, useRef, useState } from 'react';
import type { OnScreenSize } from '../picture/use-screen-sizes.ts';
import { useSetup } from '../state/app-store.ts';
import { type SweepRun, useSweeps } from '../state/sweeps.ts';
import { CellTile } from './CellTile.tsx';
import { aspectOf } from './cell-picture.ts';
import { placeWords } from './cell-words.ts';
import { sweptPass } from './has-changed.ts';
import { presentCell } from './present-cell.ts';
import { groupsOf } from './sheet-of.ts';
import { tileToward } from './tile-toward.ts';

/** The pictures of a sweep, row by row. Arrow keys go from one to the next; once one is open, the others open as well. */
export const Sheet = ({ run, onSize }: { run: SweepRun; onSize: OnScreenSize }) => {
  const setup = useSetup();
  const ref = useRef<HTMLDivElement>(null);
  const [entryId, setEntryId] = useState<string | null>(null);
  const { kind } = run.plan;
  const pass = sweptPass(setup, run.place);
  const present = pass ? presentCell(kind, run.cells, pass) : null;
  const entry = run.cells.find(({ id }) => id === entryId) ?? run.cells.find(({ id }) => id === present?.id);
  const onKeyDown = (event: KeyboardEvent) => {
    const tiles = [...(ref.current?.querySelectorAll<HTMLElement>('[data-cell]') ?? [])];
    const { openId, open } = useSweeps.getState();
    if (event.key === 'Escape') return open(null);
    const at = tiles.indexOf(event.target as HTMLElement);
    const next =
      tiles[
        tileToward(
          tiles.map((tile) => tile.getBoundingClientRect()),
          at,
          event.key,
        )
      ];
    if (!next) return;
    event.preventDefault();
    next.focus();
    if (openId !== null) open(next.dataset['cell'] ?? null);
  };
  return (
    <div ref={ref} className="sheet" onKeyDown={onKeyDown} role="group" aria-label="Pictures of the sweep">
      {groupsOf(run.cells).map(({ name, cells }) => (
        <section key={cells[0]?.id} aria-label={placeWords(kind, name)}>
          <h3>{placeWords(kind, name)}</h3>
          <ul className="cells" onFocus={(event) => setEntryId((event.target as HTMLElement).dataset['cell'] ?? null)}>
            {cells.map((cell) => (
              <CellTile
                key={cell.id}
                kind={kind}
                cell={cell}
                index={run.cells.indexOf(cell)}
                aspect={aspectOf(run)}
                isEntry={cell === (entry ?? run.cells[0])}
                present={present}
                onSize={onSize}
              />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
};
