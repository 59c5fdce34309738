import { useSession } from '../state/session.ts';
import { openFile } from './open-file.ts';

/** Endings of files that may hold a scan. */
export const scanEndings = ['.glb', '.gltf', '.obj', '.ply'] as const;

/** Endings of files that are photos; those that can’t be read are told why. */
export const photoEndings = ['.jpg', '.jpeg', '.heic', '.png', '.webp', '.dng', '.tif', '.tiff'] as const;

/** Opens a file by its ending: a scan or a photo of a test frame is asked about in a dialog, all else is taken for a setup. */
export const openAnyFile = (file: File): void => {
  if (photoEndings.some((ending) => file.name.toLowerCase().endsWith(ending)))
    useSession.getState().set({ testShot: { file, lampId: null, frameId: null } });
  else if (scanEndings.some((ending) => file.name.toLowerCase().endsWith(ending)))
    useSession.getState().set({ scanFile: file });
  else void openFile(file);
};
