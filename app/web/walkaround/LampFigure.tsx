import { Line } from '@react-three/drei';
import { useMemo } from 'react';
import { add, basisAround, distance, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import type { Waypoint } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { useApp } from '../state/app-store.ts';
import { allRoundDegrees, drawnBeamDegrees } from '../ui/beam-width.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { WalkLabel } from './WalkLabel.tsx';
import type { WalkPass } from './walk-passes.ts';

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

/** Half the length of the cross at the aim, metres. */
const crossHalf = 0.2;
const crossAt = ([x, y, z]: Vec3): Vec3[] => [
  [x - crossHalf, y, z],
  [x + crossHalf, y, z],
  [x, y - crossHalf, z],
  [x, y + crossHalf, z],
  [x, y, z - crossHalf],
  [x, y, z + crossHalf],
];

const linesOf = (place: Waypoint, degrees: number) => {
  const [position, aim] = [worldFromDocument(place.position), worldFromDocument(place.aim)];
  const ring = beamRing(position, aim, degrees);
  return {
    position,
    ring,
    post: [position, [position[0], 0, position[2]]] as Vec3[],
    edges: [0, 6, 12, 18].flatMap((i): Vec3[] => [position, ring[i] as Vec3]),
    axis: [position, aim] as Vec3[],
    cross: crossAt(aim),
  };
};

/** A lamp in the walkaround: a small ball, a post to the ground, its beam as lines, and the cross it is aimed at. */
export const LampFigure = ({ entry, isSelected }: { entry: WalkPass; isSelected: boolean }) => {
  const { frame, pass, lamp, place, measuredBeams } = entry;
  const colour = cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);
  const degrees = drawnBeamDegrees(lamp, measuredBeams);
  const { position, ring, post, edges, axis, cross } = useMemo(() => linesOf(place, degrees), [place, degrees]);
  const walk = useMemo(() => pass.waypoints.map((waypoint) => worldFromDocument(waypoint.position)), [pass.waypoints]);
  const aims = useMemo(() => pass.waypoints.map((waypoint) => worldFromDocument(waypoint.aim)), [pass.waypoints]);
  const turns = aims.some((aim) => distance(aim, aims[0] as Vec3) > 0.01);
  const look = { color: colour, lineWidth: isSelected ? 2 : 1, transparent: true, opacity: isSelected ? 1 : 0.5 };
  const onClick = () => useApp.getState().select({ kind: 'pass', frameId: frame.id, passId: pass.id });
  return (
    <group>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a thing in the scene; by keyboard its slip is chosen */}
      <mesh position={[...position]} onClick={onClick}>
        <sphereGeometry args={[isSelected ? 0.11 : 0.09, 16, 12]} />
        <meshBasicMaterial color={colour} />
      </mesh>
      <Line points={post} {...look} lineWidth={1} />
      {degrees < allRoundDegrees && (
        <>
          <Line points={ring} {...look} />
          <Line points={edges} segments {...look} />
        </>
      )}
      <Line points={axis} {...look} lineWidth={1} dashed dashSize={0.08} gapSize={0.12} />
      <Line points={cross} segments {...look} depthTest={false} />
      {walk.length > 1 && <Line points={walk} {...look} />}
      {turns && <Line points={aims} {...look} dashed dashSize={0.04} gapSize={0.12} depthTest={false} />}
      <WalkLabel at={position} text={pass.name} isStrong={isSelected} />
    </group>
  );
};
