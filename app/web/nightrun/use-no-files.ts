import { useEffect } from 'react';
import { useApp } from '../state/app-store.ts';

/** The run goes by the plan that it was opened with. Without this, the browser would leave the page for the file. */
export const useNoFiles = (): void => {
  useEffect(() => {
    const onDrag = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      const [file] = event.dataTransfer.files;
      if (event.type === 'drop' && file)
        useApp.getState().tell({
          tone: 'problem',
          text: `${file.name} was not opened. No files are taken during the run: leave it first.`,
        });
    };
    window.addEventListener('dragover', onDrag);
    window.addEventListener('drop', onDrag);
    return () => {
      window.removeEventListener('dragover', onDrag);
      window.removeEventListener('drop', onDrag);
    };
  }, []);
};
