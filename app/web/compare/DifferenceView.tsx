import { type CSSProperties, useMemo } from 'react';
import { LevelKey } from '../picture/LevelKey.tsx';
import { Progress } from '../picture/Progress.tsx';
import { Screen } from '../picture/Screen.tsx';
import { maxSamples } from '../picture/samples.ts';
import { sceneOf } from '../picture/scene-of.ts';
import { useScene } from '../picture/use-scene.ts';
import { useScreenSizes } from '../picture/use-screen-sizes.ts';
import { useApp, useFrame } from '../state/app-store.ts';
import type { PairOfSides } from './use-pair.ts';

/** By how many stops one picture is brighter or darker than the other, as a map. */
export const DifferenceView = ({ pair: { a, b } }: { pair: PairOfSides }) => {
  const frame = useFrame();
  const showsBlend = useApp((state) => state.showsBlend);
  const [sizes, onSize] = useScreenSizes();
  const { setup, scheme } = a.light;
  const { sensor } = scheme.camera ?? setup.camera;
  const scene = useMemo(() => {
    const size = sizes.get('difference');
    if (!size) return null;
    const picture = {
      ...a.light,
      screen: 'difference',
      look: 'difference',
      against: b.light,
      marksFull: false,
      size,
    } as const;
    return sceneOf([picture], { frame: showsBlend ? null : frame, samples: maxSamples });
  }, [a, b, frame, showsBlend, sizes]);
  useScene(scene);
  return (
    <div className="pair-view" style={{ '--aspect': sensor.widthMm / sensor.heightMm } as CSSProperties}>
      <p className="quiet">Plain grey: less than half a stop apart, or dark in both.</p>
      <div className="pair-picture">
        <Screen name="difference" label={`${a.name} against ${b.name}, difference in stops`} onSize={onSize} />
      </div>
      <LevelKey
        of="difference"
        words={`stops: + ${a.name} is brighter, − ${a.name} is darker than ${b.name} (hatched)`}
      />
      <Progress />
    </div>
  );
};
