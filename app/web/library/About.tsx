import { useId, useState } from 'react';
import changes from '../../../assets/CHANGELOG.md?raw';
import { version } from '../../../package.json';
import { useSession } from '../state/session.ts';
import { useModal } from '../ui/use-modal.ts';
import '../ui/about.css';

const fetchLicences = async (): Promise<string> => {
  const answer = await fetch('./licences.txt');
  if (!answer.ok) throw new Error(answer.statusText);
  return answer.text();
};

/** The licences of all that is built into the page, fetched when they are first unfolded. */
const Licences = () => {
  const [text, setText] = useState('Coming…');
  const read = async () => {
    try {
      setText(await fetchLicences());
    } catch {
      setText('The licences could not be fetched. Fold them and try again with the network on.');
    }
  };
  return (
    <details onToggle={({ currentTarget }) => currentTarget.open && void read()}>
      <summary>Licences of what is built in</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must reach it */}
      <pre tabIndex={0}>{text}</pre>
    </details>
  );
};

const close = () => useSession.getState().set({ showsAbout: false });

/** What this page is, what changed, and on whose work it stands. */
export const About = () => {
  const dialog = useModal();
  const titleId = useId();
  return (
    <dialog ref={dialog} className="scan-dialog about-dialog" aria-labelledby={titleId} onClose={close}>
      <h2 id={titleId}>Lampfall {version}</h2>
      <p>Rehearse the lighting of a night foreground before you travel. Nothing leaves your machine.</p>
      <p className="quiet">
        A rehearsal is not a permission and not a safety check. Local rules and qualified people decide. MIT licence,
        without any warranty.
      </p>
      <details>
        <summary>What changed</summary>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and keys must reach it */}
        <pre tabIndex={0}>{changes.replace(/^# .*\n+/, '').replace(/\*\*|^#+ /gm, '')}</pre>
      </details>
      <Licences />
      <div className="dialog-end">
        <button type="button" onClick={close}>
          Close
        </button>
      </div>
    </dialog>
  );
};
