import { type RefObject, useEffect } from 'react';

/** Tells the page how tall a strip at one of its edges is, for what must stay clear of it. */
export const usePageRoom = (strip: RefObject<HTMLElement | null>, name: '--top' | '--time'): void => {
  useEffect(() => {
    const element = strip.current;
    const page = element?.closest<HTMLElement>('.page');
    if (!element || !page) return;
    const observer = new ResizeObserver(() =>
      page.style.setProperty(name, `${Math.ceil(element.getBoundingClientRect().height)}px`),
    );
    observer.observe(element);
    return () => {
      observer.disconnect();
      page.style.removeProperty(name);
    };
  }, [strip, name]);
};
