import { Line } from '@react-three/drei';
import { mix, type Vec3 } from '../../../core/geometry/vec.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { useApp } from '../state/app-store.ts';
import type { Tape } from '../state/session.ts';
import { shortTapeWords } from '../ui/tape-words.ts';
import { WalkLabel } from './WalkLabel.tsx';

const colour = '#d8d2c4';

/** The measuring tape between two places of the scene. */
export const TapeFigure = ({ tape }: { tape: Tape }) => {
  const paceMetres = useApp((state) => state.history.present.walking.paceMetres);
  const ends = [tape.from, tape.to].flatMap((place) => (place ? [worldFromDocument(place)] : []));
  const [from, to] = ends as [Vec3 | undefined, Vec3 | undefined];
  return (
    <group>
      {ends.map((place) => (
        <mesh key={place.join()} position={[...place]}>
          <sphereGeometry args={[0.05, 12, 8]} />
          <meshBasicMaterial color={colour} depthTest={false} />
        </mesh>
      ))}
      {from && to && <Line points={[from, to]} color={colour} lineWidth={1.5} depthTest={false} />}
      {from && to && <WalkLabel at={mix(from, to, 0.5)} text={shortTapeWords(tape, paceMetres)} isStrong />}
    </group>
  );
};
