import { Line } from '@react-three/drei';
import { add, basisAround, distance, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import type { Frame, Lamp, Pass, Setup } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { drawnBeamDegrees } from '../ui/beam-width.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';

/** Where the edge of the beam passes at the aim's distance: a ring of points. */
const beamRing = (position: Vec3, aim: Vec3, degrees: number): Vec3[] => {
  const axis = normalize(sub(aim, position));
  const { first, second } = basisAround(axis);
  const reach = distance(aim, position);
  const half = (degrees * Math.PI) / 360;
  return Array.from({ length: 25 }, (_, i) => {
    const turn = (2 * Math.PI * i) / 24;
    const across = add(scale(first, Math.cos(turn)), scale(second, Math.sin(turn)));
    return add(position, scale(add(scale(axis, Math.cos(half)), scale(across, Math.sin(half))), reach));
  });
};

interface LampFigureProps {
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly measuredBeams: Setup['measuredBeams'];
}

/** A lamp in the walkaround: a small ball, a post to the ground, and its beam as lines. */
export const LampFigure = ({ frame, pass, lamp, measuredBeams }: LampFigureProps) => {
  const waypoint = pass.waypoints[0] as Pass['waypoints'][number];
  const [position, aim] = [worldFromDocument(waypoint.position), worldFromDocument(waypoint.aim)];
  const colour = cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);
  const ring = beamRing(position, aim, drawnBeamDegrees(lamp, measuredBeams));
  return (
    <group>
      <mesh position={[...position]}>
        <sphereGeometry args={[0.09, 16, 12]} />
        <meshBasicMaterial color={colour} />
      </mesh>
      <Line points={[position, [position[0], 0, position[2]]]} color={colour} lineWidth={1} />
      <Line points={ring} color={colour} lineWidth={1} />
      {[0, 6, 12, 18].map((i) => (
        <Line key={i} points={[position, ring[i] as Vec3]} color={colour} lineWidth={1} />
      ))}
    </group>
  );
};
