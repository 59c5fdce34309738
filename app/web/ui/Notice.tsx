import { useEffect } from 'react';

interface NoticeProps {
  readonly tone: 'problem' | 'done';
  readonly text: string;
  readonly onClose: () => void;
}

/** A word over the page, which does not move under it. Good news goes away by itself; problems stay until closed. */
export const Notice = ({ tone, text, onClose }: NoticeProps) => {
  useEffect(() => {
    if (tone === 'problem') return;
    const timer = setTimeout(onClose, 4000);
    return () => clearTimeout(timer);
  }, [tone, onClose]);
  return (
    <div className={`notice notice-${tone}`} role={tone === 'problem' ? 'alert' : 'status'}>
      <span>{text}</span>
      <button type="button" onClick={onClose} aria-label="Close this message">
        Close
      </button>
    </div>
  );
};
