import { DepthLine } from './DepthLine.tsx';
import { LightLine } from './LightLine.tsx';
import { RatioLine } from './RatioLine.tsx';
import { SkyLine } from './SkyLine.tsx';
import { StarLine } from './StarLine.tsx';

/** How light is followed, what is marked, and the numbers of the frame that is shown. */
export const FrameMore = () => (
  <section className="frame-more" aria-label="More of the frame">
    <LightLine />
    <DepthLine />
    <StarLine />
    <RatioLine />
    <SkyLine />
  </section>
);
