import { useMemo, useRef } from 'react';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { pathKind } from '../../../core/passes/path-legs.ts';
import type { Scheme, Setup, Waypoint } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { usePixelUnits } from '../picture/use-pixel-units.ts';
import { useApp } from '../state/app-store.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { openPath } from '../ui/open-path.ts';
import { spacedPlaces } from '../ui/path-ticks.ts';

const width = 1000;
/** Numbers that are nearer to each other than this are not read; pixels, as the letters' size. */
const [tickPixels, letterPixels] = [26, 12.5];

interface SweptLineProps {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly waypoints: readonly Waypoint[];
  readonly colour: string;
}

const SweptLine = ({ setup, scheme, waypoints, colour }: SweptLineProps) => {
  const svg = useRef<SVGSVGElement>(null);
  const { widthMm, heightMm } = (scheme.camera ?? setup.camera).sensor;
  const height = Math.round((width * heightMm) / widthMm);
  const pixel = usePixelUnits(svg, width, height);
  const view = useMemo(() => buildWorld(setup, scheme).view, [setup, scheme]);
  const places = waypoints.map(({ aim }) => projectPoint(view, worldFromDocument(aim)));
  // behind the lens there is no picture to draw on
  const drawn = places.includes(null) ? [] : (places as GroundPoint[]);
  const line = drawn.map(([x, y]): GroundPoint => [x * width, y * height]);
  return (
    <svg
      ref={svg}
      className="swept-marks"
      viewBox={`0 0 ${width} ${height}`}
      style={{ color: colour }}
      aria-hidden="true"
    >
      <path className="swept-case" d={openPath(line)} />
      <path className="swept-line" d={openPath(line)} />
      {spacedPlaces(line, tickPixels * pixel).map((i) => {
        const [x, y] = line[i] as GroundPoint;
        return (
          <text key={i} className="swept-number" x={x} y={y - 7 * pixel} fontSize={letterPixels * pixel}>
            {i + 1}
          </text>
        );
      })}
    </svg>
  );
};

/** What the selected pass's beam goes over, as the camera sees it: dotted, with the numbers of its waypoints. */
export const SweptMarks = ({ setup, scheme }: { setup: Setup; scheme: Scheme }) => {
  const selection = useApp((state) => state.selection);
  if (selection?.kind !== 'pass') return null;
  const frame = scheme.frames.find(({ id }) => id === selection.frameId);
  const pass = frame?.passes.find(({ id }) => id === selection.passId);
  const lamp = setup.lamps.find(({ id }) => id === pass?.lampId);
  if (!frame || !pass || !lamp || pathKind(pass.waypoints) === 'still') return null;
  const colour = cssColourOfLight(lamp.temperatureKelvin, pass.gels, frame.whiteBalance);
  return <SweptLine setup={setup} scheme={scheme} waypoints={pass.waypoints} colour={colour} />;
};
