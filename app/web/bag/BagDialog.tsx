import { useEffect, useRef, useState } from 'react';
import { type BagLamp, formatBag } from '../../../core/bag/bag-file.ts';
import { keptOf, pageBag, useBag } from '../state/bag.ts';
import { useSession } from '../state/session.ts';
import type { KeptLamp } from '../storage/records.ts';
import { download } from '../ui/download.ts';
import { FilePicker } from '../ui/FilePicker.tsx';
import { useModal } from '../ui/use-modal.ts';
import { BagRow } from './BagRow.tsx';
import { BeamTaps } from './BeamTaps.tsx';
import '../ui/test-shot.css';
import { BagRefused, freshLampName, lampsOfFile } from './bag-lamps.ts';

const close = () => useSession.getState().set({ showsBag: false });

const exportBag = (lamps: readonly BagLamp[]): void =>
  download(new Blob([formatBag(lamps)], { type: 'application/json' }), 'my-lamps.lampfall-bag.json');

/** The user's own lamps, kept across setups: named, taken out, exported, brought in, measured. */
export const BagDialog = () => {
  const dialog = useModal();
  const picker = useRef<HTMLInputElement>(null);
  const { lamps, problem } = useBag();
  const title = useRef<HTMLHeadingElement>(null);
  const putBack = useRef<HTMLButtonElement>(null);
  const [gone, setGone] = useState<KeptLamp | null>(null);
  const [told, setTold] = useState<{ readonly text: string; readonly isProblem: boolean } | null>(null);
  useEffect(() => {
    void pageBag.load();
  }, []);
  // the row that had it goes
  useEffect(() => {
    if (gone) putBack.current?.focus();
  }, [gone]);
  const add = async (added: readonly BagLamp[]) => {
    const names = (lamps ?? []).map(({ lamp }) => lamp);
    const kept = added.map((each) => {
      const lamp = { ...each.lamp, name: freshLampName(names, each.lamp) };
      names.push(lamp);
      return keptOf({ ...each, lamp }, null);
    });
    return (await pageBag.put(...kept)) ? kept.map(({ lamp }) => lamp.name).join(', ') : null;
  };
  const bringIn = async (file: File) => {
    try {
      const names = await add(await lampsOfFile(file));
      // why not is said by the bag itself
      if (names === null) setTold(null);
      else setTold({ text: names ? `Into your bag: ${names}.` : `${file.name} holds no lamp.`, isProblem: false });
    } catch (error) {
      const why = error instanceof BagRefused ? error.message : 'It could not be read';
      setTold({ text: `${file.name} was not read. ${why}. Your bag is unchanged.`, isProblem: true });
    }
  };
  return (
    <dialog
      ref={dialog}
      className="shot-dialog bag-dialog"
      aria-labelledby="bag-title"
      onClose={close}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        event.stopPropagation();
        const [file] = event.dataTransfer.files;
        if (file) void bringIn(file);
      }}
    >
      <div className="shot-top">
        <h2 id="bag-title" ref={title} tabIndex={-1}>
          My lamp bag
        </h2>
        <button type="button" disabled={!lamps?.length} onClick={() => lamps && exportBag(lamps)}>
          Export
        </button>
        <button type="button" onClick={() => picker.current?.click()}>
          Import…
        </button>
        <button type="button" onClick={close}>
          Close
        </button>
      </div>
      <FilePicker
        picker={picker}
        label="Bag of lamps, or photometric file"
        accept=".json,.ies,application/json"
        onFile={(file) => void bringIn(file)}
      />
      <p className="quiet">
        Kept in this browser, for all setups. A lamp added from here is a copy. Import takes an exported bag, or a
        photometric file (.ies).
      </p>
      {problem && <p role="alert">{problem}</p>}
      {told && <p role={told.isProblem ? 'alert' : 'status'}>{told.text}</p>}
      {gone && (
        <p role="status">
          “{gone.lamp.name}” is out of your bag.{' '}
          <button
            ref={putBack}
            type="button"
            onClick={() => {
              void pageBag.put(gone);
              setGone(null);
              title.current?.focus();
            }}
          >
            Put it back
          </button>
        </p>
      )}
      {lamps?.length === 0 && <p>Your bag is empty. Keep a lamp in it from the lamp’s slip, or measure one below.</p>}
      <ul className="bag-list">
        {lamps?.map((kept) => (
          <BagRow
            key={kept.id}
            kept={kept}
            onRename={(name) => void pageBag.correct(kept.id, (now) => ({ ...now, lamp: { ...now.lamp, name } }))}
            onDelete={() => {
              setGone(kept);
              void pageBag.remove(kept.id);
            }}
          />
        ))}
      </ul>
      <BeamTaps
        lamps={lamps ?? []}
        onNew={(lamp) => void add([{ lamp, beam: null }])}
        onChange={(id, change) => void pageBag.correct(id, change)}
      />
    </dialog>
  );
};
