import { useMemo, useState } from 'react';
import { focusStack } from '../../../core/readings/focus-plan.ts';
import { visibleRange } from '../../../core/readings/look-around.ts';
import { nearestSeen } from '../../../core/readings/nearest-seen.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { useApp, useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { useSchemeAtRest, useSetupAtRest } from '../state/at-rest.ts';
import { focusFrames } from '../state/edits/focus-frames.ts';
import { Choice } from '../ui/Choice.tsx';
import { MetresField } from '../ui/MetresField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { metresText } from '../ui/words.ts';

const toCentimetres = (metres: number) => Math.floor(metres * 100) / 100;

/** Plans a focus stack at the frame's aperture, from the nearest thing that is wanted sharp, and makes its frames. */
const FocusPlan = ({ onDone }: { onDone: () => void }) => {
  const setup = useSetup();
  const scheme = useScheme();
  const frame = useFrame();
  const { edit } = useApp.getState();
  const [typed, setTyped] = useState<number | null>(null);
  const [to, setTo] = useState('stars');
  const [overlapPercent, setOverlap] = useState(10);
  const camera = scheme.camera ?? setup.camera;
  // looks about the picture: not at each step of a drag
  const [setupAtRest, schemeAtRest] = [useSetupAtRest(), useSchemeAtRest()];
  const { seen, farthest } = useMemo(() => {
    const world = buildWorld(setupAtRest, schemeAtRest);
    return { seen: nearestSeen(world), farthest: visibleRange(world).farthestMetres };
  }, [setupAtRest, schemeAtRest]);
  const nearest = typed ?? toCentimetres(seen[0]?.metres ?? 2);
  const farthestMetres = to === 'stars' || farthest === null ? null : Math.max(farthest, nearest);
  const { steps, complete } = focusStack(camera, frame.aperture, {
    nearestMetres: nearest,
    farthestMetres,
    overlapShare: overlapPercent / 100,
  });
  const make = () => {
    edit((s) =>
      focusFrames(
        s,
        { schemeId: scheme.id, frameId: frame.id },
        steps.map(({ focusMetres }) => focusMetres),
      ),
    );
    onDone();
  };
  return (
    <div className="focus-plan" role="group" aria-label="Focus frames">
      <div className="fields">
        <MetresField label="Sharp from" value={nearest} min={0.05} max={1000} onChange={setTyped} />
        <Choice
          label="to"
          value={to}
          options={[
            ['stars', 'the stars'],
            ...(farthest === null ? [] : [['things', `the farthest thing, ${metresText(farthest)}`] as const]),
          ]}
          onChange={setTo}
        />
        <NumberField
          label="Overlap"
          unit="%"
          value={overlapPercent}
          min={0}
          max={90}
          step={5}
          digits={0}
          onChange={setOverlap}
        />
      </div>
      <div className="actions" role="group" aria-label="Nearest that is seen">
        {seen.slice(0, 6).map(({ subjectId, name, metres }) => (
          <button key={subjectId ?? ''} type="button" className="small" onClick={() => setTyped(toCentimetres(metres))}>
            {name} {metresText(metres)}
          </button>
        ))}
      </div>
      {steps.length === 0 ? (
        <p>Nothing can be planned: that is nearer than this lens focuses.</p>
      ) : (
        <ol aria-label="Focus distances">
          {steps.map(({ focusMetres, nearMetres, farMetres }) => (
            <li key={nearMetres}>
              focus {metresText(focusMetres)}, sharp {metresText(nearMetres)} to {metresText(farMetres)}
            </li>
          ))}
        </ol>
      )}
      {!complete && steps.length > 0 && (
        <p>{steps.length} frames do not reach that far. Stop down, or begin farther off.</p>
      )}
      <div className="actions">
        <button type="button" className="small" disabled={steps.length < 2} onClick={make}>
          {steps.length < 2 ? 'One focus does it' : `Make ${steps.length} frames of “${frame.name}”`}
        </button>
        {steps.length > 1 && (
          <span className="quiet">The blend here does not choose what is sharp: stack them in your editor.</span>
        )}
      </div>
    </div>
  );
};

/** Opens the plan of a focus stack. */
export const FocusFrames = () => {
  const [isOpen, setIsOpen] = useState(false);
  return (
    <>
      <button type="button" className="small" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        Focus frames
      </button>
      {isOpen && <FocusPlan onDone={() => setIsOpen(false)} />}
    </>
  );
};
