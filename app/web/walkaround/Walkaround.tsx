import { useMemo, useRef, useState } from 'react';
import { distance, type Vec3 } from '../../../core/geometry/vec.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { useSession } from '../state/session.ts';
import { CameraFigure } from './CameraFigure.tsx';
import { EyeControls } from './EyeControls.tsx';
import { Handles } from './Handles.tsx';
import { heldThing } from './held-thing.ts';
import { LampFigure } from './LampFigure.tsx';
import { MoonFigure, PatchFigure } from './SceneMarks.tsx';
import { ShadowFigure } from './ShadowFigure.tsx';
import { StageMesh } from './StageMesh.tsx';
import { TapeFigure } from './TapeFigure.tsx';
import { eyeOf, type ViewKind } from './views.ts';
import { WalkCanvas } from './WalkCanvas.tsx';
import { WalkFigures } from './WalkFigures.tsx';
import { walkPasses } from './walk-passes.ts';

const views: readonly (readonly [ViewKind, string])[] = [
  ['start', 'Reset view'],
  ['camera', 'Camera'],
  ['above', 'Above'],
  ['side', 'Side'],
];

/**
 * The set-up in plain daylight from any side: what stands where, what the lamps reach, and where shadows fall. Not lit by
 * the lamps: that is what the viewfinder is for.
 */
export const Walkaround = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const selection = useApp((state) => state.selection);
  const hidesAnswer = useSession((state) => state.hidesAnswer);
  const showsWalks = useSession((state) => state.showsWalks);
  const keys = useRef<HTMLDivElement>(null);
  const [asked, setAsked] = useState<{ kind: ViewKind }>({ kind: 'start' });
  const world = useMemo(() => buildWorld(setup, scheme), [setup, scheme]);
  const held = useMemo(() => heldThing(setup, scheme.id, selection), [setup, scheme.id, selection]);
  const [mode, setMode] = useState<'move' | 'turn'>('move');
  const tape = useSession((state) => state.tape);
  const passes = useMemo(() => walkPasses(setup, scheme), [setup, scheme]);
  const camera = scheme.camera ?? setup.camera;
  const aim = useMemo(() => worldFromDocument(camera.aim), [camera]);
  const spreadMetres = [world.view.position, ...passes.map(({ place }) => worldFromDocument(place.position))].reduce(
    (most, place) => Math.max(most, distance(place, aim)),
    2,
  );
  // the eye is placed anew when the camera is, not when a lamp is
  // biome-ignore lint/correctness/useExhaustiveDependencies: as said
  const eye = useMemo(() => eyeOf(asked.kind, world.view, aim, spreadMetres), [asked, aim]);
  const moon = world.frames[0]?.lights.find(({ id }) => id === 'moon')?.source;
  const isSelected = (frameId: string, passId: string) =>
    selection?.kind === 'pass' && selection.passId === passId && selection.frameId === frameId;
  return (
    <section className="walkaround" aria-label="Walkaround: drag to turn, wheel or pinch to come closer">
      <div
        ref={keys}
        className="walk-scene"
        role="application"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is turned by keys
        tabIndex={0}
        aria-label="The set-up from any side. Arrow keys turn it, plus and minus come closer and go back. Press a subject to select it; drag its handles to move or turn it."
      >
        <WalkCanvas camera={{ position: [...eye.position], fov: eye.fieldDegrees, far: 400 }}>
          <color attach="background" args={['#16181b']} />
          <fog attach="fog" args={['#16181b', 20, 120]} />
          <hemisphereLight args={['#d8d2c4', '#33373c', 1.1]} />
          <directionalLight position={[4, 10, 6]} intensity={0.9} />
          <StageMesh stage={world.stage} />
          <CameraFigure view={world.view} depthMetres={Math.min(distance(world.view.position, aim), 60)} />
          {passes.map((entry) => {
            const stands = isSelected(entry.frame.id, entry.pass.id);
            return <LampFigure key={entry.key} entry={entry} isSelected={stands} />;
          })}
          {!hidesAnswer &&
            passes.map((entry) => {
              const stands = isSelected(entry.frame.id, entry.pass.id);
              return <ShadowFigure key={entry.key} stage={world.stage} entry={entry} isSelected={stands} />;
            })}
          {showsWalks && <WalkFigures />}
          {setup.patch && <PatchFigure patch={setup.patch} />}
          {moon?.kind === 'moon' && <MoonFigure toward={moon.toward as Vec3} aim={aim} awayMetres={spreadMetres} />}
          {held && !tape && <Handles key={held.key} held={held} mode={mode} />}
          {tape && <TapeFigure tape={tape} />}
          <EyeControls eye={eye} asked={asked} keysFrom={keys} />
        </WalkCanvas>
      </div>
      <div className="walk-views" role="group" aria-label="Seen from">
        {views.map(([kind, name]) => (
          <button key={kind} type="button" onClick={() => setAsked({ kind })}>
            {name}
          </button>
        ))}
        {held?.turnRadians != null &&
          (['move', 'turn'] as const).map((each) => (
            <button key={each} type="button" aria-pressed={mode === each} onClick={() => setMode(each)}>
              {each === 'move' ? 'Move' : 'Turn'}
            </button>
          ))}
      </div>
    </section>
  );
};
