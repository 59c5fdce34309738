import { useId, useMemo, useRef, useState } from 'react';
import { encodeLink } from '../../../core/share/encode-link.ts';
import { forSharing } from '../../../core/share/for-sharing.ts';
import { maxLinkLetters } from '../../../core/share/link-text.ts';
import { useSetup } from '../state/app-store.ts';
import { useSharing } from '../state/sharing.ts';
import { Check } from '../ui/Check.tsx';
import { useModal } from '../ui/use-modal.ts';
import '../ui/share.css';

const count = (letters: number): string => letters.toLocaleString('en');
const close = () => useSharing.setState({ isOpen: false });

interface LinkFieldProps {
  readonly address: string;
  readonly letters: number;
}

/** The link in a field, to be copied by hand where the browser does not let the page do it. */
const LinkField = ({ address, letters }: LinkFieldProps) => {
  const field = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState('');
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setSaid('Copied');
    } catch {
      field.current?.select();
      setSaid('Copy it from the field');
    }
  };
  return (
    <>
      <label className="share-link">
        Link
        <input ref={field} readOnly value={address} onFocus={({ currentTarget }) => currentTarget.select()} />
      </label>
      <p className="quiet">
        {count(letters)} of at most {count(maxLinkLetters)} characters. <span role="status">{said}</span>
      </p>
      <div className="dialog-end">
        <button type="button" onClick={close}>
          Close
        </button>
        <button type="button" className="strong" onClick={() => void copy()}>
          Copy the link
        </button>
      </div>
    </>
  );
};

/** Makes a link that holds the setup, says what goes along, and lets the place be left out. */
export const ShareDialog = ({ onSaveFile }: { onSaveFile: () => void }) => {
  const dialog = useModal();
  const titleId = useId();
  const setup = useSetup();
  const [leavesOutPlace, setLeavesOutPlace] = useState(true);
  const { fragment, letters } = useMemo(() => encodeLink(forSharing(setup, leavesOutPlace)), [setup, leavesOutPlace]);
  return (
    <dialog ref={dialog} className="scan-dialog share-dialog" aria-labelledby={titleId} onClose={close}>
      <h2 id={titleId}>Share by link</h2>
      <p>
        The setup is in the link itself and is sent to nobody by this page. Whoever has the link can read all of it,
        names and notes too. The log of your nights, who gave permission, and the dates of test shots stay here.
      </p>
      <Check label="Leave out where it is" isOn={leavesOutPlace} onChange={setLeavesOutPlace} />
      <p className="quiet">
        {leavesOutPlace
          ? 'Latitude and longitude go along in whole degrees, towns without their names. The sky comes out a little turned.'
          : 'The exact coordinates go along.'}
      </p>
      {fragment === null ? (
        <>
          <p role="alert">
            Too long for a link: {count(letters)} characters; at most {count(maxLinkLetters)} are safe to send. Give the
            setup as a file instead.
          </p>
          <div className="dialog-end">
            <button type="button" onClick={close}>
              Close
            </button>
            <button type="button" className="strong" onClick={onSaveFile}>
              Save as a file
            </button>
          </div>
        </>
      ) : (
        <LinkField address={`${location.origin}${location.pathname}#${fragment}`} letters={letters} />
      )}
    </dialog>
  );
};
