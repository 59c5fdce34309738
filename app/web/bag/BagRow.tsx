import { statedLumens } from '../state/bag-twins.ts';
import type { KeptLamp } from '../storage/records.ts';
import { kindWords } from '../ui/lamp-kind-words.ts';
import { realWords } from '../ui/real-words.ts';
import { TextField } from '../ui/TextField.tsx';
import { threeFigures } from '../ui/words.ts';

const beamText = ({ lamp, beam }: KeptLamp): string | null => {
  if (!('beam' in lamp)) return null;
  switch (lamp.beam.shape) {
    case 'spot':
      return `beam ${threeFigures(lamp.beam.beamDegrees)}°`;
    case 'lobe':
    case 'flood':
      return `beam ${threeFigures(lamp.beam.degrees)}°`;
    case 'measured':
      return `beam of ${beam?.name ?? 'a file'}`;
    default:
      return null;
  }
};

interface BagRowProps {
  readonly kept: KeptLamp;
  readonly onRename: (name: string) => void;
  readonly onDelete: () => void;
}

/** A lamp of the bag: its name, what it is, and a way to throw it out. */
export const BagRow = ({ kept, onRename, onDelete }: BagRowProps) => {
  const { lamp } = kept;
  const words = [
    kindWords[lamp.kind],
    `box ${threeFigures(statedLumens(kept))} lm`,
    lamp.correctionStops === 0 ? null : realWords(lamp.correctionStops, lamp.testShots.length),
    beamText(kept),
    lamp.lowestLevelPercent < 100 ? `lowest ${Number(lamp.lowestLevelPercent.toFixed(2))} %` : null,
  ];
  return (
    <li className="bag-row">
      <TextField label={`Name of the ${kindWords[lamp.kind]}`} value={lamp.name} onChange={onRename} />
      <span className="quiet">{words.filter(Boolean).join(' · ')}</span>
      <button type="button" aria-label={`Take out ${lamp.name}`} onClick={onDelete}>
        Take out
      </button>
    </li>
  );
};
