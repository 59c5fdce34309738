import { Line } from '@react-three/drei';
import { useMemo } from 'react';
import { distance } from '../../../core/geometry/vec.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { groundShadows } from '../ui/ground-shadows.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { edgeEnds, hatchEnds, shadowRay } from './shadow-lines.ts';
import type { WalkPass } from './walk-passes.ts';

/** Between hatch lines, as a share of the lamp's distance. */
const hatchShare = 1 / 36;

/** The shadows of one pass: on the ground, hatched along the light; and the rays from the lamp over the tops to the tips. */
export const ShadowFigure = ({ stage, entry, isSelected }: { stage: Stage; entry: WalkPass; isSelected: boolean }) => {
  const { frame, pass, lamp, place } = entry;
  const colour = cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);
  const shapes = useMemo(() => {
    const [from, aim] = [worldFromDocument(place.position), worldFromDocument(place.aim)];
    const spacing = Math.min(Math.max(distance(from, aim) * hatchShare, 0.06), 0.5);
    return groundShadows(stage, place).map((shadow) => ({
      id: shadow.subject.id,
      hatch: hatchEnds(shadow, from, aim, spacing),
      edges: edgeEnds(shadow),
      ray: [from, shadowRay(shadow.subject, from).end] as const,
    }));
  }, [stage, place]);
  return (
    <group>
      {shapes.map(({ id, hatch, edges, ray }) => (
        <group key={id}>
          {hatch.length > 1 && (
            <Line points={hatch} segments color="#08090a" lineWidth={1} transparent opacity={isSelected ? 0.9 : 0.5} />
          )}
          {edges.length > 1 && (
            <Line points={edges} segments color="#979186" lineWidth={1} transparent opacity={isSelected ? 0.9 : 0.35} />
          )}
          <Line
            points={ray}
            color={colour}
            lineWidth={1}
            dashed
            dashSize={0.24}
            gapSize={0.14}
            transparent
            opacity={isSelected ? 1 : 0.45}
          />
        </group>
      ))}
    </group>
  );
};
