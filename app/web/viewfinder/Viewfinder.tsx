import { Canvas } from '@react-three/fiber';
import { useCallback, useRef, useState } from 'react';
import { canDrawPicture } from '../render/capability.ts';
import { DepthLine } from './DepthLine.tsx';
import { FrameLine } from './FrameLine.tsx';
import { LightLine } from './LightLine.tsx';
import { Picture } from './Picture.tsx';
import { StarLine } from './StarLine.tsx';
import { usePictureView } from './use-picture-view.ts';

const able = canDrawPicture();

const NoPicture = () => (
  <p className="no-picture">
    This browser can’t draw the picture: it has no WebGL2, or not enough of it. The ground plan, the readings and the
    cautions work all the same. Try a current browser, or turn on hardware acceleration.
  </p>
);

/** What the sensor records, with the line of camera settings under it. */
export const Viewfinder = () => {
  const { setup, schemes } = usePictureView();
  const [isLost, setIsLost] = useState(false);
  const progress = useRef<HTMLSpanElement>(null);
  // straight into the element: a word that changes twice a second is no reason to render
  const showProgress = useCallback((words: string) => {
    if (progress.current && progress.current.textContent !== words) progress.current.textContent = words;
  }, []);
  const watch = (canvas: HTMLCanvasElement) => {
    canvas.addEventListener('webglcontextlost', () => setIsLost(true));
    canvas.addEventListener('webglcontextrestored', () => setIsLost(false));
  };
  const { widthMm, heightMm } = (schemes[0]?.camera ?? setup.camera).sensor;
  return (
    <section className="viewfinder" aria-label="Viewfinder">
      <div
        className={`picture${schemes.length > 1 ? ' picture-pair' : ''}${isLost ? ' picture-lost' : ''}`}
        style={schemes.length > 1 ? undefined : { aspectRatio: widthMm / heightMm }}
      >
        {able ? (
          <Canvas
            frameloop="demand"
            dpr={[1, 1.5]}
            gl={{ antialias: false, alpha: false, powerPreference: 'high-performance' }}
            onCreated={({ gl }) => {
              gl.setClearColor('#08090a');
              watch(gl.domElement);
            }}
            aria-label={`Picture: ${schemes.map(({ name }) => name).join(' beside ')}`}
          >
            <Picture onProgress={showProgress} />
          </Canvas>
        ) : (
          <NoPicture />
        )}
        <span ref={progress} className="picture-progress" />
        {isLost && (
          <p className="no-picture">The graphics card was lost for a moment. The picture comes back by itself.</p>
        )}
        {schemes.length > 1 && (
          <div className="picture-names">
            {schemes.map(({ id, name }) => (
              <span key={id}>{name}</span>
            ))}
          </div>
        )}
      </div>
      <FrameLine />
      <div className="frame-more">
        <LightLine />
        <DepthLine />
        <StarLine />
      </div>
    </section>
  );
};
