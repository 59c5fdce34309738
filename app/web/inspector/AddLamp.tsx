import type { Frame, Lamp, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { useLampPart } from '../state/lamp-part.ts';
import { addLampWithPass } from './add-lamp-with-pass.ts';
import { kindWords } from './new-lamps.ts';

const kinds: readonly Lamp['kind'][] = ['torch', 'panel', 'lantern', 'tube', 'point'];

/** Puts another lamp into the frame. */
export const AddLamp = ({ setup, scheme, frame }: { setup: Setup; scheme: Scheme; frame: Frame }) => {
  const { edit, select } = useApp.getState();
  const isFull = setup.lamps.length >= 64 || frame.passes.length >= 64;
  const add = (kind: Lamp['kind']) => {
    const added = addLampWithPass(setup, scheme, frame, kind);
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
    </div>
  );
};
