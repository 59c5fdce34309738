import { useEffect, useState } from 'react';

/** Whether Shift is held just now. */
export const useShift = (): boolean => {
  const [isHeld, setIsHeld] = useState(false);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => setIsHeld(event.shiftKey);
    const onBlur = () => setIsHeld(false);
    window.addEventListener('keydown', onKey);
    window.addEventListener('keyup', onKey);
    window.addEventListener('blur', onBlur);
    return () => {
      window.removeEventListener('keydown', onKey);
      window.removeEventListener('keyup', onKey);
      window.removeEventListener('blur', onBlur);
    };
  }, []);
  return isHeld;
};
