import type { Lamp, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { beamOfLamp, isSameLamp, keptOf, pageBag, twinOf, useBag } from '../state/bag.ts';
import { takeLampFromBag } from '../state/edits/bag-edits.ts';
import { realWords } from '../ui/shot-words.ts';

/** Whether the lamp is in the user's bag, and whether it is as it is there. */
export const LampBagLine = ({ lamp, setup }: { lamp: Lamp; setup: Setup }) => {
  const { lamps, problem } = useBag();
  const { edit, tell } = useApp.getState();
  const twin = twinOf(lamps, lamp);
  const own = { lamp, beam: beamOfLamp(setup, lamp) };
  const keep = async () => {
    if (await pageBag.put(keptOf(own, twin))) tell({ tone: 'done', text: `${lamp.name} is in your bag` });
  };
  const open = twin && !isSameLamp(own, twin) ? twin : null;
  return (
    <div className="lamp-bag">
      {problem && <p role="alert">{problem}</p>}
      {!twin && (
        <button type="button" onClick={() => void keep()}>
          Keep in my bag
        </button>
      )}
      {twin && !open && <span className="quiet">In your bag as it is here.</span>}
      {open && (
        <>
          <span>
            Your bag has it differently
            {open.lamp.correctionStops !== lamp.correctionStops &&
              `: ${realWords(open.lamp.correctionStops, open.lamp.testShots.length)}`}
            .
          </span>{' '}
          <button type="button" onClick={() => edit((s) => takeLampFromBag(s, lamp.id, open))}>
            Take the bag’s
          </button>{' '}
          <button type="button" onClick={() => void keep()}>
            Put this into my bag
          </button>
        </>
      )}
    </div>
  );
};
