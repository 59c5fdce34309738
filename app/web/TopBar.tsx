import { useRef } from 'react';
import { SchemeTabs } from './compare/SchemeTabs.tsx';
import { SetupMenu } from './library/SetupMenu.tsx';
import { NightChoice } from './NightChoice.tsx';
import { RoomChoice } from './RoomChoice.tsx';
import { useApp } from './state/app-store.ts';
import { usePageRoom } from './ui/use-page-room.ts';

/** The page’s upper edge: setup, schemes, rooms, and the steps back and forward. */
export const TopBar = () => {
  const canUndo = useApp((state) => state.history.past.length > 0);
  const canRedo = useApp((state) => state.history.future.length > 0);
  const { undo, redo } = useApp.getState();
  const ref = useRef<HTMLElement>(null);
  usePageRoom(ref, '--top');
  return (
    <header className="top" ref={ref}>
      <SetupMenu />
      <SchemeTabs />
      <RoomChoice />
      <div className="choices steps">
        <NightChoice />
        <button type="button" disabled={!canUndo} onClick={undo}>
          Undo
        </button>
        <button type="button" disabled={!canRedo} onClick={redo}>
          Redo
        </button>
      </div>
    </header>
  );
};
