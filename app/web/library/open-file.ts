import { beginsAsLm63 } from '../../../core/photometry/lm63/lm63-head.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { maxFileBytes } from '../../../core/setup/setup-size.ts';
import { useApp } from '../state/app-store.ts';
import { loadReader } from '../state/samples.ts';
import { worded } from '../ui/lengths.ts';
import { asOwn, openNewest } from './open-newest.ts';

/** Opens a setup file. When it can't be used, says why and leaves what was open untouched. */
export const openFile = async (file: File): Promise<void> => {
  const { tell } = useApp.getState();
  const refuse = (why: string) =>
    tell({ tone: 'problem', text: `${file.name} was not opened. ${why}. Your present setup is unchanged.` });
  if (file.size > maxFileBytes)
    return refuse(`It has ${(file.size / 1e6).toFixed(1)} MB; at most ${maxFileBytes / 1e6} MB are read`);
  let text = '';
  const load = async () => {
    text = await file.text();
    return (await loadReader()).readSetup(text);
  };
  try {
    if (await openNewest(load, asOwn)) tell({ tone: 'done', text: `Opened ${file.name}. It is now among your own` });
  } catch (error) {
    if (file.name.toLowerCase().endsWith('.ies') || beginsAsLm63(text))
      return refuse('It is a lamp’s photometric file: read it in a lamp’s slip, or import it into your bag');
    if (!/^\uFEFF?\s*[[{]/.test(text)) return refuse('It is not a setup file (.lampfall.json)');
    refuse(error instanceof SetupError ? worded(error.message) : 'It could not be read');
  }
};
