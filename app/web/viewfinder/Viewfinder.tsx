import { type CSSProperties, useMemo } from 'react';
import { FrameLine } from '../frames/FrameLine.tsx';
import { LevelKey } from '../picture/LevelKey.tsx';
import { LightNote } from '../picture/LightNote.tsx';
import { PictureMarks } from '../picture/PictureMarks.tsx';
import { Progress } from '../picture/Progress.tsx';
import { Screen } from '../picture/Screen.tsx';
import { maxSamples } from '../picture/samples.ts';
import { sceneOf } from '../picture/scene-of.ts';
import { useScene } from '../picture/use-scene.ts';
import { useScreenSizes } from '../picture/use-screen-sizes.ts';
import { useApp, useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { blendScreen, frameScreenName, useFrameScreens } from '../state/frame-screens.ts';
import { useSession } from '../state/session.ts';
import { SweepTool } from './SweepTool.tsx';
import { SweptMarks } from './SweptMarks.tsx';
import { useCameraKeys } from './use-camera-keys.ts';

/** The present scheme's picture. */
const Picture = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const frame = useFrame();
  const showsBlend = useApp((state) => state.showsBlend);
  const marks = useSession((state) => state.marks);
  const isUnlit = useSession((state) => state.hidesAnswer);
  const isByDay = useSession((state) => state.showsByDay) && !isUnlit;
  const paints = useSession((state) => state.paints);
  const [sizes, onSize] = useScreenSizes();
  const smallSizes = useFrameScreens((state) => state.sizes);
  const scene = useMemo(() => {
    const size = sizes.get('viewfinder');
    if (!size) return null;
    const look = marks.levels && !isByDay ? 'levels' : 'picture';
    const picture = {
      setup,
      scheme,
      isUnlit,
      isByDay,
      screen: 'viewfinder',
      look,
      against: null,
      marksFull: marks.full,
      size,
    } as const;
    const small = [...smallSizes].flatMap(([id, smallSize]) => {
      const own = id === blendScreen ? null : scheme.frames.find((each) => each.id === id);
      return own === undefined
        ? []
        : [{ ...picture, screen: frameScreenName(id), size: smallSize, frame: own, marksFull: false }];
    });
    return sceneOf([picture, ...small], { frame: showsBlend ? null : frame, samples: maxSamples });
  }, [setup, scheme, frame, showsBlend, marks.levels, marks.full, isUnlit, isByDay, sizes, smallSizes]);
  useScene(scene);
  return (
    <>
      <Screen name="viewfinder" label={`Picture: ${scheme.name}`} onSize={onSize} />
      <PictureMarks schemeId={scheme.id} />
      {!isUnlit && <SweptMarks setup={setup} scheme={scheme} />}
      {paints && <SweepTool setup={setup} scheme={scheme} place={paints} />}
      <Progress />
      {isByDay && <p className="picture-word">By day, to build and frame by: no lamps, no night.</p>}
    </>
  );
};

/** What the sensor records, with the line of camera settings under it. */
export const Viewfinder = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const hidesAnswer = useSession((state) => state.hidesAnswer);
  const hasLevels = useSession((state) => state.marks.levels);
  const { widthMm, heightMm } = (scheme.camera ?? setup.camera).sensor;
  const onKeyDown = useCameraKeys(scheme.id);
  return (
    <section className="viewfinder" aria-label="Viewfinder">
      <div
        className="picture"
        style={{ '--aspect': widthMm / heightMm } as CSSProperties}
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: the camera is walked by keys
        tabIndex={0}
        aria-label="What the camera sees. W A S D walk the camera, arrow keys turn it, Page Up and Page Down lift it."
        onKeyDown={onKeyDown}
      >
        <Picture />
        {hidesAnswer && (
          <p className="picture-hidden">Hidden until you have pointed: this is the place without the lamp.</p>
        )}
      </div>
      <LightNote />
      {hasLevels && <LevelKey of="levels" words="Stops from mid-grey, to the nearest whole one" />}
      <FrameLine />
    </section>
  );
};
