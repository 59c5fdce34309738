import { type RefObject, useEffect } from 'react';

/** Tells the page how tall the time line is, for what must stay clear of it. */
export const usePageRoom = (timeLine: RefObject<HTMLElement | null>): void => {
  useEffect(() => {
    const element = timeLine.current;
    const page = element?.closest<HTMLElement>('.page');
    if (!element || !page) return;
    const observer = new ResizeObserver(() =>
      page.style.setProperty('--time', `${Math.ceil(element.getBoundingClientRect().height)}px`),
    );
    observer.observe(element);
    return () => {
      observer.disconnect();
      page.style.removeProperty('--time');
    };
  }, [timeLine]);
};
