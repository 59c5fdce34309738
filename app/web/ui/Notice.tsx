import { useEffect } from 'react';

interface NoticeProps {
  readonly tone: 'problem' | 'done';
  readonly text: string;
  /** What can be done about it. */
  readonly actions?: readonly { readonly label: string; readonly onPress: () => void }[];
  /** Takes back what it tells of; there is time to think about it. */
  readonly undo?: () => void;
  /** When it goes away by itself; null = it stays until closed. */
  readonly seconds?: number | null;
  readonly onClose: () => void;
}

/**
 * A word over the page, which does not move under it. Good news goes away by itself; problems stay until closed, or until
 * whoever tells them takes them back.
 */
export const Notice = ({ tone, text, undo, onClose, ...props }: NoticeProps) => {
  const { actions = [], seconds = tone === 'problem' ? null : undo ? 15 : 4 } = props;
  useEffect(() => {
    if (seconds === null) return;
    const timer = setTimeout(onClose, seconds * 1000);
    return () => clearTimeout(timer);
  }, [seconds, onClose]);
  return (
    <div className={`notice notice-${tone}`} role={tone === 'problem' ? 'alert' : 'status'}>
      <span>{text}</span>
      {actions.map(({ label, onPress }) => (
        <button key={label} type="button" onClick={onPress}>
          {label}
        </button>
      ))}
      {undo && (
        <button
          type="button"
          onClick={() => {
            undo();
            onClose();
          }}
        >
          Undo
        </button>
      )}
      <button type="button" onClick={onClose} aria-label="Close this message">
        Close
      </button>
    </div>
  );
};
