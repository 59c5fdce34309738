import { lampDirection } from '../../../core/readings/direction.ts';
import type { Frame, Lamp, Pass, Position } from '../../../core/setup/schema/setup.ts';
import { clockText } from '../../../core/units/clock.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { aimPass, movePass } from '../state/edits/pass-edits.ts';
import { drawnBeamDegrees } from '../ui/beam-width.ts';
import { lampWordsAt } from '../ui/lamp-words-at.ts';
import { lengthWords } from '../ui/lengths.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { wedgePath } from '../ui/plan-paths.ts';
import { type PlanView, toPlan } from '../ui/plan-view.ts';
import { PlanMark } from './PlanMark.tsx';

interface LampMarkProps {
  readonly view: PlanView;
  readonly schemeId: string;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly camera: Position;
  readonly isSelected: boolean;
}

/** A lamp of a pass, its beam, and the cross it is aimed at. */
export const LampMark = ({ view, schemeId, frame, pass, lamp, camera, isSelected }: LampMarkProps) => {
  const { edit, select } = useApp.getState();
  const { measuredBeams } = useSetup();
  const { position, aim } = pass.waypoints[0] as Pass['waypoints'][number];
  const place = { schemeId, frameId: frame.id, passId: pass.id };
  const colour = cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);
  const [x, y] = toPlan(view, position);
  const [ax, ay] = toPlan(view, aim);
  const [wp, wa, wc] = [position, aim, camera].map(worldFromDocument) as [Position, Position, Position];
  const { clockHours, distanceMetres } = lampDirection(wa, wc, wp);
  const where = `${clockText(clockHours)} · ${lengthWords(distanceMetres, 1)}`;
  const [wordsX, wordsY] = lampWordsAt([x, y]);
  const onSelect = () => select({ kind: 'pass', frameId: frame.id, passId: pass.id });
  return (
    <g style={{ color: colour }}>
      <g transform={`translate(${x} ${y})`} className="beam" aria-hidden="true">
        <path d={wedgePath(0, 0, ax - x, ay - y, drawnBeamDegrees(lamp, measuredBeams))} />
        <line x2={ax - x} y2={ay - y} />
      </g>
      {isSelected && (
        <PlanMark
          view={view}
          position={aim}
          aim={null}
          label={`Aim of ${pass.name}. Arrow keys move it.`}
          isSelected={false}
          onSelect={onSelect}
          onMove={(to, run) => edit((setup) => aimPass(setup, place, to), run)}
        >
          <path d="M-7 0H7M0 -7V7" className="aim" />
        </PlanMark>
      )}
      <PlanMark
        view={view}
        position={position}
        aim={aim}
        label={`${pass.name}, ${lamp.name}, at ${where}. Arrow keys move it, Page Up and Page Down lift it, Alt with left or right walks it round the clock.`}
        isSelected={isSelected}
        onSelect={onSelect}
        onMove={(to, run) => edit((setup) => movePass(setup, place, to), run)}
      >
        <circle r={8} className="lamp-disc" />
        <text y={wordsY} x={wordsX} className="mark-text hour">
          {isSelected ? where : pass.name}
        </text>
      </PlanMark>
    </g>
  );
};
