import type { Lamp, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { keptOf, pageBag, useBag } from '../state/bag.ts';
import { beamOfLamp, isSameLamp, statedLumens, twinOf } from '../state/bag-twins.ts';
import { takeLampFromBag } from '../state/edits/bag-edits.ts';
import type { KeptLamp } from '../storage/records.ts';
import { realWords } from '../ui/real-words.ts';
import { threeFigures } from '../ui/words.ts';

/** What the bag's lamp differs in from one of a setup, where that is told in a word: ": box 1000 lm, real −0.8 stop, 1 shot". */
const differenceText = (own: { readonly lamp: Lamp; readonly beam: KeptLamp['beam'] }, kept: KeptLamp): string => {
  const [here, there] = [statedLumens(own), statedLumens(kept)].map(threeFigures);
  const { correctionStops, testShots } = kept.lamp;
  const words = [
    here === there ? null : `box ${there} lm`,
    correctionStops === own.lamp.correctionStops ? null : realWords(correctionStops, testShots.length),
  ].filter(Boolean);
  return words.length > 0 ? `: ${words.join(', ')}` : '';
};

/** Whether the lamp is in the user's bag, and whether it is as it is there. */
export const LampBagLine = ({ lamp, setup }: { lamp: Lamp; setup: Setup }) => {
  const { lamps, problem } = useBag();
  const { edit, tell } = useApp.getState();
  const own = { lamp, beam: beamOfLamp(setup, lamp) };
  const twin = twinOf(lamps, own);
  const keep = async (insteadOf: KeptLamp | null) => {
    const kept = keptOf(own, insteadOf);
    if (!(await pageBag.put(kept))) return;
    // what it was may have been calibrated over many nights
    const undo = () => void (insteadOf ? pageBag.put(insteadOf) : pageBag.remove(kept.id));
    tell({ tone: 'done', text: `${lamp.name} is in your bag${insteadOf ? ' as it is here' : ''}`, undo });
  };
  const open = twin && !isSameLamp(own, twin.kept) ? twin : null;
  return (
    <div className="lamp-bag">
      {problem && <p role="alert">{problem}</p>}
      {!twin && (
        <button type="button" onClick={() => void keep(null)}>
          Keep in my bag
        </button>
      )}
      {twin && !open && <span className="quiet">In your bag as it is here.</span>}
      {open && (
        <>
          <span>Your bag has it differently{differenceText(own, open.kept)}.</span>{' '}
          <button type="button" onClick={() => edit((s) => takeLampFromBag(s, lamp.id, open.kept))}>
            Take the bag’s
          </button>{' '}
          <button type="button" onClick={() => void keep(open.kept)}>
            Put this into my bag
          </button>
          {!open.isAlike && (
            <button type="button" onClick={() => void keep(null)}>
              Keep both
            </button>
          )}
        </>
      )}
    </div>
  );
};
