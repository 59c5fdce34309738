import type { ThreeEvent } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import type { Stage } from '../../../core/world/stage.ts';
import { useApp } from '../state/app-store.ts';
import { documentPlace } from '../state/edits/document-place.ts';
import { useSession } from '../state/session.ts';
import { stageGeometry } from './stage-geometry.ts';

/** A press that goes farther than this turned the view. */
const stillPixels = 4;

/** Ground and subjects. A press selects a subject; with the tape out it lays the tape's ends. */
export const StageMesh = ({ stage }: { stage: Stage }) => {
  const geometry = useMemo(() => stageGeometry(stage), [stage]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  const onClick = (event: ThreeEvent<MouseEvent>) => {
    if (event.delta > stillPixels) return;
    event.stopPropagation();
    const { tape, set } = useSession.getState();
    if (tape) {
      const place = documentPlace(event.point.toArray(), 1e-3);
      set({ tape: tape.from && !tape.to ? { ...tape, to: place } : { from: place, to: null } });
      return;
    }
    const subject = stage.subjects[stage.subjectOfTriangle[event.faceIndex ?? -1] ?? -1];
    if (subject) useApp.getState().select({ kind: 'subject', subjectId: subject.id });
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a thing in the scene; by keyboard its slip is chosen
    <mesh geometry={geometry} onClick={onClick}>
      <meshLambertMaterial vertexColors side={2} />
    </mesh>
  );
};
