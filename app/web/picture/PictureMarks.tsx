import { useMemo, useRef } from 'react';
import { buildWorld } from '../../../core/world/world.ts';
import { useSetup } from '../state/app-store.ts';
import { useMarks } from '../state/marks.ts';
import { useSession } from '../state/session.ts';
import { FramingMarks } from './FramingMarks.tsx';
import { OutlineMarks } from './OutlineMarks.tsx';
import { PatchMark } from './PatchMark.tsx';
import { passInks } from './pass-inks.ts';
import { ShadowMarks } from './ShadowMarks.tsx';
import { SharpnessMarks } from './SharpnessMarks.tsx';
import { usePixelUnits } from './use-pixel-units.ts';

/** Width of the drawing over a picture, in its own units. */
const width = 1000;

/** What is drawn over a scheme's picture: outlines of shadows, lit outlines, the patch. Fills the box that the picture fills. */
export const PictureMarks = ({ schemeId }: { schemeId: string }) => {
  const setup = useSetup();
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  const marks = useMarks(schemeId);
  const wants = useSession((state) => state.marks);
  const hidesAnswer = useSession((state) => state.hidesAnswer);
  const svg = useRef<SVGSVGElement>(null);
  const { widthMm, heightMm } = (scheme?.camera ?? setup.camera).sensor;
  const height = Math.round((width * heightMm) / widthMm);
  const pixel = usePixelUnits(svg, width, height);
  const inks = useMemo(() => (scheme ? passInks(setup, scheme) : new Map()), [setup, scheme]);
  const view = useMemo(() => (scheme ? buildWorld(setup, scheme).view : null), [setup, scheme]);
  if (!scheme || !view) return null;
  const drawing = { inks, size: [width, height] as const, pixel };
  return (
    <svg
      ref={svg}
      className="picture-marks"
      viewBox={`0 0 ${width} ${height}`}
      role="group"
      aria-label="Marks over the picture"
    >
      <FramingMarks view={view} size={drawing.size} showsThirds={wants.thirds} showsHorizon={wants.horizon} />
      {marks && wants.outline && !hidesAnswer && <OutlineMarks outlines={marks.outlines} {...drawing} />}
      {marks && wants.shadows && !hidesAnswer && <ShadowMarks shadows={marks.shadows} {...drawing} />}
      {marks && wants.sharpness && <SharpnessMarks blurs={marks.blurs} size={drawing.size} pixel={pixel} />}
      {setup.patch && <PatchMark setup={setup} scheme={scheme} patch={setup.patch} size={drawing.size} pixel={pixel} />}
    </svg>
  );
};
