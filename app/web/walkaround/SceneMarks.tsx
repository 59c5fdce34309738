import { Line } from '@react-three/drei';
import { useMemo } from 'react';
import { add, basisAround, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import type { Patch } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { WalkLabel } from './WalkLabel.tsx';

/** The patch whose relief is read, seen through what stands before it. */
export const PatchFigure = ({ patch }: { patch: Patch }) => {
  const points = useMemo(() => {
    const corners = patch.corners.map(worldFromDocument);
    return [...corners, corners[0] as Vec3];
  }, [patch]);
  return (
    <group>
      <Line
        points={points}
        color="#d8d2c4"
        lineWidth={1.5}
        dashed
        dashSize={0.1}
        gapSize={0.07}
        depthTest={false}
        transparent
      />
      <WalkLabel at={points[0] as Vec3} text="Patch" />
    </group>
  );
};

/** Where moonlight comes from: an arrow toward the aim. */
export const MoonFigure = ({ toward, aim, awayMetres }: { toward: Vec3; aim: Vec3; awayMetres: number }) => {
  const { arrow, tail } = useMemo(() => {
    const { first } = basisAround(toward);
    const at = (metres: number, aside: number) => add(add(aim, scale(toward, metres)), scale(first, aside));
    const [end, head] = [awayMetres * 0.6, awayMetres * 0.06];
    const from = at(awayMetres, 0);
    const tip = at(end, 0);
    return { arrow: [from, tip, tip, at(end + head, head * 0.5), tip, at(end + head, -head * 0.5)], tail: from };
  }, [toward, aim, awayMetres]);
  return (
    <group>
      <Line points={arrow} segments color="#d8d2c4" lineWidth={1.5} />
      <WalkLabel at={tail} text="Moon" />
    </group>
  );
};
