import { useEffect } from 'react';
import { useApp } from './state/app-store.ts';
import { pageSaving } from './state/page-saving.ts';
import { isTyping } from './ui/is-typing.ts';

/** Escape, undo and redo, wherever the focus is. */
export const useKeys = () => {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const { undo, redo, cancel } = useApp.getState();
      const key = event.key.toLowerCase();
      if (event.key === 'Escape') cancel();
      // a field with half-typed text undoes its own letters
      if (!(event.ctrlKey || event.metaKey) || isTyping(event.target)) return;
      if (key === 'z' || key === 'y') event.preventDefault();
      if (key === 'y' || (key === 'z' && event.shiftKey)) redo();
      else if (key === 'z') undo();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
};

/** The browser asks before it throws away what could not be kept. */
export const useUnsavedGuard = () => {
  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      if (pageSaving.wouldLose) event.preventDefault();
    };
    window.addEventListener('beforeunload', onLeave);
    return () => window.removeEventListener('beforeunload', onLeave);
  }, []);
};
