import { Line } from '@react-three/drei';
import { useMemo } from 'react';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import { viewDirection } from '../../../core/camera/camera-view.ts';
import { add, dot, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import { WalkLabel } from './WalkLabel.tsx';

const colour = '#979186';

/** A corner of what the camera sees, out to a depth, or where it meets the ground before that. */
const cornerOf = (view: CameraView, x: number, y: number, depthMetres: number): Vec3 => {
  const way = viewDirection(view, x, y);
  const out = depthMetres / dot(way, view.forward);
  const down = way[1] < 0 ? -view.position[1] / way[1] : Number.POSITIVE_INFINITY;
  return add(view.position, scale(way, down > 0 ? Math.min(out, down) : out));
};

/** The camera in the walkaround: the four edges of what it sees, out to its aim, and a post to the ground. */
export const CameraFigure = ({ view, depthMetres }: { view: CameraView; depthMetres: number }) => {
  const { edges, rim, post } = useMemo(() => {
    const at = view.position;
    const corners = [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ].map(([x, y]) => cornerOf(view, x as number, y as number, depthMetres));
    return {
      edges: corners.flatMap((corner): Vec3[] => [at, corner]),
      rim: [...corners, corners[0] as Vec3],
      post: [at, [at[0], 0, at[2]]] as Vec3[],
    };
  }, [view, depthMetres]);
  return (
    <group>
      <Line points={edges} segments color={colour} lineWidth={1} transparent opacity={0.55} />
      <Line points={rim} color={colour} lineWidth={1} />
      <Line points={post} color={colour} lineWidth={1} />
      <mesh position={[...view.position]}>
        <boxGeometry args={[0.14, 0.1, 0.1]} />
        <meshBasicMaterial color={colour} />
      </mesh>
      <WalkLabel at={view.position} text="Camera" isUnder />
    </group>
  );
};
