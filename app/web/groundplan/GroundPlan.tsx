import { Fragment, useRef } from 'react';
import type { Position, Waypoint } from '../../../core/setup/schema/setup.ts';
import { stageOf } from '../../../core/world/stage.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { useSession } from '../state/session.ts';
import { placeWords } from '../ui/lamp-words-at.ts';
import { lampBoxes } from '../ui/plan-dial.ts';
import { type PlanView, planHalf, planViewOf, toPlan } from '../ui/plan-view.ts';
import { CameraMark } from './CameraMark.tsx';
import { DragArrow } from './DragArrow.tsx';
import { HazardMarks } from './HazardMarks.tsx';
import { LampHint } from './LampHint.tsx';
import { LampMark } from './LampMark.tsx';
import { PassPath } from './PassPath.tsx';
import { PlanGrid } from './PlanGrid.tsx';
import { PlanPointer } from './PlanPointer.tsx';
import { PlanTape } from './PlanTape.tsx';
import { askingView, type Pointing } from './pointing.ts';
import { ShadowShapes } from './ShadowShapes.tsx';
import { SkyMarks } from './SkyMarks.tsx';
import { SubjectMarks } from './SubjectMarks.tsx';
import { WalkLines } from './WalkLines.tsx';

/**
 * The ground from above: camera at the bottom, clock round the subject, lamps, shadows, frame edges. With `pointing`, a
 * question lies over it.
 */
export const GroundPlan = ({ pointing }: { pointing?: Pointing | undefined }) => {
  const setup = useSetup();
  const scheme = useScheme();
  const selection = useApp((state) => state.selection);
  const isDragging = useApp((state) => state.history.gestureStart !== null);
  const tape = useSession((state) => state.tape);
  const hidesShadows = useSession((state) => state.hidesAnswer);
  const showsWalks = useSession((state) => state.showsWalks);
  const camera = cameraOf(setup, scheme.id);
  const stage = stageOf(setup);
  const passes = scheme.frames.flatMap((frame) => frame.passes.map((pass) => ({ frame, pass })));
  const kept = useRef<PlanView | null>(null);
  // the drawing holds still under a hand that drags
  if (!kept.current || !isDragging) {
    const { hazards } = setup;
    const chosen = setup.subjects.find(({ id }) => selection?.kind === 'subject' && selection.subjectId === id);
    const places = [
      ...passes.flatMap(({ pass }) => pass.waypoints.map(({ position }) => position)),
      ...(chosen ? [chosen.position] : []),
      ...hazards.flatMap(({ id, position }): Position[] =>
        selection?.kind === 'hazard' && selection.hazardId === id ? [[...position, 0]] : [],
      ),
    ];
    kept.current = pointing ? askingView(camera, places, pointing) : planViewOf(camera, places);
  }
  const view = kept.current;
  const isPassSelected = (frameId: string, passId: string) =>
    selection?.kind === 'pass' && selection.passId === passId && selection.frameId === frameId;
  const lampPlaces = passes.flatMap(({ frame, pass }) => {
    const words = isPassSelected(frame.id, pass.id) ? placeWords : pass.name;
    return lampBoxes(toPlan(view, (pass.waypoints[0] as Waypoint).position), words);
  });
  return (
    <>
      <section className="groundplan" aria-label="Ground plan">
        <svg
          viewBox={`${-planHalf} ${-planHalf} ${2 * planHalf} ${2 * planHalf}`}
          role="group"
          aria-label="Ground plan, camera at the bottom"
        >
          <SubjectMarks view={view} stage={stage} land />
          <PlanGrid view={view} northDegrees={setup.place.northDegrees} />
          {!hidesShadows && <SkyMarks view={view} place={setup.place} lamps={lampPlaces} />}
          {!hidesShadows &&
            passes.map(({ frame, pass }) => (
              <ShadowShapes
                key={`${frame.id}/${pass.id}`}
                view={view}
                stage={stage}
                pass={pass}
                isSelected={isPassSelected(frame.id, pass.id)}
              />
            ))}
          <HazardMarks view={view} />
          <SubjectMarks view={view} stage={stage} land={false} />
          {showsWalks && !pointing && <WalkLines view={view} />}
          <CameraMark view={view} camera={camera} schemeId={scheme.id} isSelected={selection?.kind === 'camera'} />
          {passes.map(({ frame, pass }) => {
            const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
            const isSelected = isPassSelected(frame.id, pass.id);
            const of = lamp && { view, schemeId: scheme.id, frame, pass, lamp, isSelected };
            return (
              of && (
                <Fragment key={`${frame.id}/${pass.id}`}>
                  <LampMark {...of} camera={camera.position} />
                  <PassPath {...of} />
                </Fragment>
              )
            );
          })}
          {!pointing && <DragArrow view={view} scheme={scheme} />}
          {tape && !pointing && <PlanTape view={view} tape={tape} />}
          {pointing && <PlanPointer view={view} {...pointing} />}
        </svg>
      </section>
      {!pointing && <LampHint />}
    </>
  );
};
