import { useState } from 'react';
import { useSession } from '../state/session.ts';
import { worded } from '../ui/lengths.ts';
import { useModal } from '../ui/use-modal.ts';
import { bringIn } from './bring-in.ts';
import { PlacingForm } from './PlacingForm.tsx';
import { useScanFile } from './use-scan-file.ts';

/** Brings in a scan: says what the file holds, asks for unit, up and a measured length, shows how it will stand. */
export const ScanDialog = ({ file, schemeId }: { file: File; schemeId: string }) => {
  const dialog = useModal();
  const scan = useScanFile(file);
  const [refused, setRefused] = useState<string | null>(null);
  const close = () => useSession.getState().set({ scanFile: null });
  const add = async () => {
    setRefused(null);
    const packed = await scan.pack();
    if (!packed) return;
    const mean = scan.summary?.meanColour;
    const why = bringIn(file.name, packed, mean ? [...mean] : 0.2, schemeId);
    if (why === null) close();
    else setRefused(why);
  };
  const { summary, words, fault, placingFault } = scan;
  return (
    <dialog ref={dialog} className="scan-dialog" aria-labelledby="scan-title" onClose={close}>
      <h2 id="scan-title">A scan from {file.name}</h2>
      {fault && (
        <p role="alert">
          {file.name} can’t be used. {fault}. Your setup is unchanged.
        </p>
      )}
      {!fault && !summary && <p role="status">{words}…</p>}
      {summary && (
        <>
          <p>
            {summary.triangleCount.toLocaleString('en')} triangles,{' '}
            {summary.meanColour ? 'with colours' : 'without colours'}.
          </p>
          {summary.leftOut.length > 0 && (
            <ul className="quiet">
              {summary.leftOut.map((sentence) => (
                <li key={sentence}>{sentence}.</li>
              ))}
            </ul>
          )}
          <PlacingForm scan={scan} summary={summary} />
        </>
      )}
      {!fault && placingFault && <p role="alert">It can’t be brought in so. {worded(placingFault)}.</p>}
      {!fault && refused && <p role="alert">{worded(refused)}</p>}
      <div className="dialog-end">
        <button type="button" onClick={close}>
          {fault ? 'Close' : 'Cancel'}
        </button>
        {summary && !fault && (
          <button type="button" className="strong" disabled={scan.isBusy} onClick={() => void add()}>
            {scan.isBusy ? 'Packing…' : 'Bring it in'}
          </button>
        )}
      </div>
    </dialog>
  );
};
