import { useSession } from '../state/session.ts';
import { openFile } from './open-file.ts';

/** Endings of files that may hold a scan. */
export const scanEndings = ['.glb', '.gltf', '.obj', '.ply'] as const;

/** Opens a file by its ending: a scan is asked about in a dialog, all else is taken for a setup. */
export const openAnyFile = (file: File): void => {
  if (scanEndings.some((ending) => file.name.toLowerCase().endsWith(ending)))
    useSession.getState().set({ scanFile: file });
  else void openFile(file);
};
