import type { Position } from '../../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../../core/units/body-height.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import * as edits from '../state/edits/frame-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';

const PlaceFields = ({ position, onChange }: { position: Position; onChange: (position: Position) => void }) => (
  <>
    <NumberField
      label="East"
      unit="m"
      value={position[0]}
      min={-5000}
      max={5000}
      step={0.1}
      onChange={(v) => onChange([v, position[1], position[2]])}
    />
    <NumberField
      label="North"
      unit="m"
      value={position[1]}
      min={-5000}
      max={5000}
      step={0.1}
      onChange={(v) => onChange([position[0], v, position[2]])}
    />
    <NumberField
      label="Height"
      unit="m"
      value={position[2]}
      min={-500}
      max={2000}
      step={0.1}
      onChange={(v) => onChange([position[0], position[1], v])}
    />
  </>
);

/** The camera as a strip that opens. */
export const CameraSlip = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const isOpen = useApp((state) => state.selection?.kind === 'camera');
  const { edit, select } = useApp.getState();
  const camera = edits.cameraOf(setup, scheme.id);
  const set = (change: (c: typeof camera) => typeof camera) => edit((s) => edits.changeCamera(s, scheme.id, change));
  const { position, aim } = camera;
  return (
    <li className={isOpen ? 'slip slip-open' : 'slip'}>
      <button
        type="button"
        className="slip-head"
        aria-expanded={isOpen}
        onClick={() => select(isOpen ? null : { kind: 'camera' })}
      >
        <svg viewBox="-10 -10 20 18" width={12} height={12} aria-hidden="true">
          <path d="M-9 -4H-5L-3 -9H3L5 -4H9V7H-9Z" />
        </svg>
        <strong>Camera</strong>
        <span>
          {camera.focalLengthMm} mm · {position[2].toFixed(2)} m · {bodyHeightWord(position[2])}
        </span>
      </button>
      {isOpen && (
        <div className="inspector">
          <div className="fields">
            <NumberField
              label="Focal length"
              unit="mm"
              value={camera.focalLengthMm}
              min={3}
              max={2000}
              step={1}
              onChange={(focalLengthMm) => set((c) => ({ ...c, focalLengthMm }))}
            />
            <PlaceFields position={position} onChange={(to) => edit((s) => edits.moveCamera(s, scheme.id, to))} />
            <NumberField
              label="Looks at height"
              unit="m"
              value={aim[2]}
              min={-500}
              max={2000}
              step={0.1}
              onChange={(up) => edit((s) => edits.aimCamera(s, scheme.id, [aim[0], aim[1], up]))}
            />
            <NumberField
              label="Looks at east"
              unit="m"
              value={aim[0]}
              min={-5000}
              max={5000}
              step={0.1}
              onChange={(v) => edit((s) => edits.aimCamera(s, scheme.id, [v, aim[1], aim[2]]))}
            />
            <NumberField
              label="Looks at north"
              unit="m"
              value={aim[1]}
              min={-5000}
              max={5000}
              step={0.1}
              onChange={(v) => edit((s) => edits.aimCamera(s, scheme.id, [aim[0], v, aim[2]]))}
            />
            <NumberField
              label="Roll"
              unit="°"
              value={camera.rollDegrees}
              min={-180}
              max={180}
              step={1}
              onChange={(rollDegrees) => set((c) => ({ ...c, rollDegrees }))}
            />
          </div>
        </div>
      )}
    </li>
  );
};

/** The selected subject as a strip; others are reached on the plan. */
export const SubjectSlips = () => {
  const setup = useSetup();
  const selection = useApp((state) => state.selection);
  const { edit, select } = useApp.getState();
  return setup.subjects.map((subject) => {
    const isOpen = selection?.kind === 'subject' && selection.subjectId === subject.id;
    const { id, position, turnDegrees } = subject;
    return (
      <li key={id} className={isOpen ? 'slip slip-open' : 'slip'}>
        <button
          type="button"
          className="slip-head"
          aria-expanded={isOpen}
          onClick={() => select(isOpen ? null : { kind: 'subject', subjectId: id })}
        >
          <svg viewBox="0 0 14 14" width={12} height={12} aria-hidden="true">
            <path d="M2 13L4 2L9 1L12 13Z" />
          </svg>
          <strong>{subject.name}</strong>
          <span>{subject.parts.length === 1 ? '1 part' : `${subject.parts.length} parts`}</span>
        </button>
        {isOpen && (
          <div className="inspector">
            <div className="fields">
              <PlaceFields position={position} onChange={(to) => edit((s) => edits.moveSubject(s, id, to))} />
              <NumberField
                label="Turn"
                unit="°"
                value={turnDegrees}
                min={-360}
                max={360}
                step={1}
                onChange={(turn) => edit((s) => edits.turnSubject(s, id, turn))}
              />
            </div>
          </div>
        )}
      </li>
    );
  });
};
