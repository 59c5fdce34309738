import { type CSSProperties, type PointerEvent, useMemo, useState } from 'react';
import { PictureMarks } from '../picture/PictureMarks.tsx';
import { Progress } from '../picture/Progress.tsx';
import { Screen } from '../picture/Screen.tsx';
import { maxSamples } from '../picture/samples.ts';
import { sceneOf } from '../picture/scene-of.ts';
import { useScene } from '../picture/use-scene.ts';
import { useScreenSizes } from '../picture/use-screen-sizes.ts';
import { useApp, useFrame } from '../state/app-store.ts';
import { useSession } from '../state/session.ts';
import type { PairOfSides } from './use-pair.ts';

/** Two pictures laid over each other: a left of a line, b right of it. The line goes where it is dragged, or by keys. */
export const WipeView = ({ pair: { a, b } }: { pair: PairOfSides }) => {
  const frame = useFrame();
  const showsBlend = useApp((state) => state.showsBlend);
  const marks = useSession((state) => state.marks);
  const [percent, setPercent] = useState(50);
  const [sizes, onSize] = useScreenSizes();
  const { setup, scheme } = a.light;
  const { sensor } = scheme.camera ?? setup.camera;
  const scene = useMemo(() => {
    const size = sizes.get('wipe/a');
    const under = sizes.get('wipe/b');
    if (!size || !under) return null;
    const look = marks.levels ? 'levels' : 'picture';
    const wanted = { look, against: null, marksFull: marks.full } as const;
    const pictures = [
      { ...b.light, ...wanted, screen: 'wipe/b', size: under },
      { ...a.light, ...wanted, screen: 'wipe/a', size },
    ];
    return sceneOf(pictures, { frame: showsBlend ? null : frame, samples: maxSamples });
  }, [a, b, frame, showsBlend, marks.levels, marks.full, sizes]);
  useScene(scene);
  const follow = (event: PointerEvent<HTMLDivElement>) => {
    if (!event.currentTarget.hasPointerCapture(event.pointerId)) return;
    const { left, width } = event.currentTarget.getBoundingClientRect();
    setPercent(Math.min(Math.max(Math.round((100 * (event.clientX - left)) / width), 0), 100));
  };
  return (
    <div className="pair-view" style={{ '--aspect': sensor.widthMm / sensor.heightMm } as CSSProperties}>
      <div
        className="pair-picture"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          follow(event);
        }}
        onPointerMove={follow}
      >
        <Screen name="wipe/b" label={`Picture: ${b.name}`} onSize={onSize} />
        {!b.light.isUnlit && <PictureMarks schemeId={b.id} />}
        <div className="wipe-upper" style={{ clipPath: `inset(0 ${100 - percent}% 0 0)` }}>
          <Screen name="wipe/a" label={`Picture: ${a.name}`} onSize={onSize} />
          {!a.light.isUnlit && <PictureMarks schemeId={a.id} />}
        </div>
        <span className="wipe-line" style={{ left: `${percent}%` }} aria-hidden="true" />
        <span className="pair-name">{a.name}</span>
        <span className="pair-name pair-name-b">{b.name}</span>
        <Progress />
      </div>
      <input
        type="range"
        className="wipe-range"
        min={0}
        max={100}
        value={percent}
        aria-label={`Wipe between ${a.name} and ${b.name}`}
        aria-valuetext={`${a.name} on ${percent} % of the width, ${b.name} on the rest`}
        onChange={(event) => setPercent(Number(event.currentTarget.value))}
      />
    </div>
  );
};
