import { useEffect } from 'react';

/**
 * Takes the first file that is dropped anywhere in the window, beside the page too: nothing dropped ever takes the page's
 * place. What has a use of its own for files stops the event before it comes here.
 *
 * @param onFile what becomes of it, the same from draw to draw; null = somebody else listens
 */
export const useDroppedFile = (onFile: ((file: File) => void) | null): void => {
  useEffect(() => {
    if (!onFile) return;
    const onDrag = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return;
      event.preventDefault();
      const [file] = event.dataTransfer.files;
      if (event.type === 'drop' && file) onFile(file);
    };
    window.addEventListener('dragover', onDrag);
    window.addEventListener('drop', onDrag);
    return () => {
      window.removeEventListener('dragover', onDrag);
      window.removeEventListener('drop', onDrag);
    };
  }, [onFile]);
};
