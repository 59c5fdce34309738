import { type RefObject, useEffect, useState } from 'react';

/**
 * How many units of a drawing make one pixel on the screen, for what must be as large in a small tile as in a wide
 * picture: words, hatching. 1 until the drawing has been measured.
 */
export const usePixelUnits = (svg: RefObject<SVGSVGElement | null>, width: number, height: number): number => {
  const [units, setUnits] = useState(1);
  useEffect(() => {
    const drawing = svg.current;
    if (!drawing) return;
    const observer = new ResizeObserver(() => {
      const { clientWidth, clientHeight } = drawing;
      // the drawing is as large as fits both ways
      if (clientWidth && clientHeight) setUnits(Math.max(width / clientWidth, height / clientHeight));
    });
    observer.observe(drawing);
    return () => observer.disconnect();
  }, [svg, width, height]);
  return units;
};
