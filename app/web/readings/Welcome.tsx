import { useState } from 'react';

const key = 'lampfall-welcome-seen';

/** Storage may be denied; then the hints simply come again. */
const wasSeen = (): boolean => {
  try {
    return localStorage.getItem(key) !== null;
  } catch {
    return false;
  }
};

/** One sentence and two things to try, until put away. */
export const Welcome = () => {
  const [isOpen, setIsOpen] = useState(() => !wasSeen());
  if (!isOpen) return null;
  const close = () => {
    setIsOpen(false);
    try {
      localStorage.setItem(key, 'yes');
    } catch {
      // see wasSeen
    }
  };
  return (
    <aside className="welcome" aria-label="First steps">
      <p>This is what the camera would record. Walk the lamp round before you travel.</p>
      <p>
        <em>Drag the lamp</em> on the plan to six o’clock and see the picture go flat. <em>Type 2.8</em> into the
        aperture and see the exposure change.
      </p>
      <button type="button" onClick={close}>
        Put away
      </button>
    </aside>
  );
};
