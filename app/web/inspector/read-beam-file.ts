import { Lm63Error } from '../../../core/photometry/lm63/lm63-error.ts';
import { maxLm63Characters, parseLm63 } from '../../../core/photometry/lm63/parse-lm63.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { maxSetupBytes, sizeFault } from '../../../core/setup/setup-size.ts';
import { useApp } from '../state/app-store.ts';
import { BeamRefused, beamFromFile } from '../state/beam-from-file.ts';
import { maxMeasuredBeams, setBeamFromFile } from '../state/edits/lamp-edits.ts';

const reasonOf = (error: unknown): string => {
  if (error instanceof Lm63Error) return `Line ${error.line}: ${error.expected}`;
  return error instanceof BeamRefused ? error.message : 'It could not be read';
};

/** Gives a lamp the beam and the output of a photometric file. When it can't be used, says why and changes nothing. */
export const readBeamFile = async (file: File, lampId: string): Promise<void> => {
  const { edit, tell } = useApp.getState();
  const refuse = (why: string) =>
    tell({ tone: 'problem', text: `${file.name} was not read. ${why}. The lamp is unchanged.` });
  const megabytes = maxLm63Characters / 1e6;
  if (file.size > maxLm63Characters)
    return refuse(`It has ${(file.size / 1e6).toFixed(1)} MB; at most ${megabytes} MB are read`);
  try {
    const measured = parseLm63(await file.text());
    const beam = beamFromFile(measured);
    const before = useApp.getState().history.present;
    const lamp = before.lamps.find(({ id }) => id === lampId);
    const after = setBeamFromFile(before, lampId, beam);
    if (!lamp) return refuse('The lamp is no longer there');
    if (after === before)
      return refuse(`The setup’s lamps use ${maxMeasuredBeams} measured beams, as many as it takes`);
    // what could not be opened again must not be made
    if (sizeFault(formatSetup(after)))
      return refuse(`With it the setup would have more than ${maxSetupBytes / 1e6} MB and could not be opened again`);
    edit((setup) => setBeamFromFile(setup, lampId, beam));
    // how a lamp hangs is not known here
    const tilt = measured.tilt ? '; its tilt table is not applied' : '';
    tell({ tone: 'done', text: `${lamp.name} shines as ${file.name} says${tilt}` });
  } catch (error) {
    refuse(reasonOf(error));
  }
};
