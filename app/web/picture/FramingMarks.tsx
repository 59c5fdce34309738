import type { CameraView } from '../../../core/camera/camera-view.ts';
import { horizonLine } from '../../../core/camera/turn-camera.ts';

interface FramingMarksProps {
  readonly view: CameraView;
  readonly size: readonly [width: number, height: number];
  readonly showsThirds: boolean;
  readonly showsHorizon: boolean;
}

/** Lines to frame by: the thirds, and the horizon of level ground. */
export const FramingMarks = ({ view, size: [width, height], showsThirds, showsHorizon }: FramingMarksProps) => {
  const horizon = showsHorizon ? horizonLine(view) : null;
  const thirds = [1 / 3, 2 / 3].map((t) => `M${width * t} 0V${height}M0 ${height * t}H${width}`).join('');
  const across = horizon && `M0 ${(height * horizon[0]).toFixed(2)}L${width} ${(height * horizon[1]).toFixed(2)}`;
  return (
    <g aria-hidden="true">
      {showsThirds && <path className="thirds-lines" d={thirds} />}
      {across && <path className="horizon-case" d={across} />}
      {across && <path className="horizon-line" d={across} />}
    </g>
  );
};
