import { Line } from '@react-three/drei';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import { viewDirection } from '../../../core/camera/camera-view.ts';
import { add, scale, type Vec3 } from '../../../core/geometry/vec.ts';

/** How far the drawn edges of the picture reach, metres. */
const reach = 4;

/** The camera in the walkaround: the four edges of what it sees, and a post to the ground. */
export const CameraFigure = ({ view }: { view: CameraView }) => {
  const corner = (x: number, y: number): Vec3 => add(view.position, scale(viewDirection(view, x, y), reach));
  const corners = [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)] as const;
  const [x, , z] = view.position;
  return (
    <group>
      {corners.map((to) => (
        <Line key={to.join()} points={[view.position, to]} color="#979186" lineWidth={1} />
      ))}
      <Line points={[...corners, corners[0]]} color="#979186" lineWidth={1} />
      <Line points={[view.position, [x, 0, z]]} color="#979186" lineWidth={1} />
    </group>
  );
};
