import { Line } from '@react-three/drei';
import { useMemo } from 'react';
import { mix, type Vec3 } from '../../../core/geometry/vec.ts';
import type { WalkLine } from '../../../core/readings/walk-lines.ts';
import { useApp } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { belongsTo, drawnWalks, walkWords } from '../ui/walk-words.ts';
import { WalkLabel } from './WalkLabel.tsx';

/** Over level ground, so that it does not flicker in it. */
const overMetres = 0.03;

const WalkFigure = ({ walk, isOwn }: { walk: WalkLine; isOwn: boolean }) => {
  const points = useMemo(() => walk.points.map(([east, north]): Vec3 => [east, overMetres, -north]), [walk]);
  const at = Math.floor((points.length - 2) / 2);
  const middle = useMemo(() => mix(points[at] as Vec3, points[at + 1] as Vec3, 0.5), [points, at]);
  return (
    <group>
      <Line
        points={points}
        color={isOwn ? '#d8d2c4' : '#8b8880'}
        lineWidth={1}
        transparent
        opacity={isOwn ? 1 : 0.5}
        dashed
        dashSize={0.3}
        gapSize={0.2}
        depthTest={false}
      />
      {isOwn && walk.to !== null && <WalkLabel at={middle} text={walkWords(walk)} />}
    </group>
  );
};

/** The ways on foot, dashed on the level: those of the selected pass strongly, with metres and seconds. */
export const WalkFigures = () => {
  const walks = useReport()?.walks ?? [];
  const selection = useApp((state) => state.selection);
  return drawnWalks(walks).map((walk) => (
    <WalkFigure
      key={JSON.stringify([walk.from, walk.to])}
      walk={walk}
      isOwn={selection?.kind === 'pass' && belongsTo(walk, selection.frameId, selection.passId)}
    />
  ));
};
