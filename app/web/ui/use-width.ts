import { type RefObject, useEffect, useRef, useState } from 'react';

/** How wide something is on the page, in CSS pixels; 0 while it is not shown. */
export const useWidth = <T extends Element>(): readonly [RefObject<T | null>, number] => {
  const ref = useRef<T>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const observer = new ResizeObserver(() => setWidth(Math.floor(element.getBoundingClientRect().width)));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
};
