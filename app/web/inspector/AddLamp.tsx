import { useEffect } from 'react';
import type { BagLamp } from '../../../core/bag/bag-file.ts';
import type { Frame, Lamp, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { pageBag, useBag } from '../state/bag.ts';
import { statedLumens } from '../state/bag-twins.ts';
import { EditRefused } from '../state/edits/edit-refused.ts';
import { useLampPart } from '../state/lamp-part.ts';
import { useSession } from '../state/session.ts';
import { Drop } from '../ui/Drop.tsx';
import { kindWords } from '../ui/lamp-kind-words.ts';
import { realWords } from '../ui/real-words.ts';
import { threeFigures } from '../ui/words.ts';
import { addLampWithPass } from './add-lamp-with-pass.ts';

const kinds: readonly Lamp['kind'][] = ['torch', 'panel', 'lantern', 'tube', 'point'];

type Added = ReturnType<typeof addLampWithPass>;

/** Adds, or says why that can't be. */
const attemptToAdd = (add: () => Added): { readonly added: Added | null; readonly refused: string } => {
  try {
    return { added: add(), refused: '' };
  } catch (error) {
    if (error instanceof EditRefused) return { added: null, refused: error.message };
    throw error;
  }
};

/** Puts another lamp into the frame. */
export const AddLamp = ({ setup, scheme, frame }: { setup: Setup; scheme: Scheme; frame: Frame }) => {
  const { edit, select, tell } = useApp.getState();
  const isFull = setup.lamps.length >= 64 || frame.passes.length >= 64;
  const kept = useBag((state) => state.lamps);
  useEffect(() => void pageBag.load(), []);
  const add = (wanted: Lamp['kind'] | BagLamp) => {
    const { added, refused } = attemptToAdd(() => addLampWithPass(setup, scheme, frame, wanted));
    if (!added) return tell({ tone: 'problem', text: refused });
    edit(() => added.setup);
    select({ kind: 'pass', frameId: frame.id, passId: added.passId });
    // what its box says comes next
    useLampPart.setState({ isOpen: true });
    // the strip it makes is far above the button on a phone
    requestAnimationFrame(() => document.querySelector('.slip-open')?.scrollIntoView({ block: 'nearest' }));
  };
  return (
    <div className="add-lamp" role="group" aria-label="Add a lamp">
      <span>Add a lamp:</span>
      {kinds.map((kind) => (
        <button key={kind} type="button" disabled={isFull} onClick={() => add(kind)}>
          {kindWords[kind]}
        </button>
      ))}
      <Drop label="from my bag" listLabel="Lamps in my bag" closesOnPress>
        {kept?.length === 0 && <p className="quiet">Your bag is empty. Keep a lamp in it from the lamp’s own slip.</p>}
        {kept?.map((each) => (
          <button key={each.id} type="button" disabled={isFull} onClick={() => add(each)}>
            {each.lamp.name}
            {each.lamp.correctionStops !== 0 && (
              <span className="quiet"> · {realWords(each.lamp.correctionStops, each.lamp.testShots.length)}</span>
            )}
            <span className="quiet"> · box {threeFigures(statedLumens(each))} lm</span>
          </button>
        ))}
        <button type="button" onClick={() => useSession.getState().set({ showsBag: true })}>
          Open my bag…
        </button>
      </Drop>
    </div>
  );
};
