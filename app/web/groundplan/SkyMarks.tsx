import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { hourOf } from '../state/hour-of-place.ts';
import { type Box, clockBoxes, dialBoxes } from '../ui/plan-dial.ts';
import { arrowReach, edgeMarks, glowSign, type SkySign, skySign } from '../ui/plan-sky.ts';
import type { PlanView } from '../ui/plan-view.ts';
import { coreShape, glowShape, moonRing } from '../ui/sky-glyphs.ts';

type Place = Setup['place'];

/** Where moonlight comes from: the moon of that hour, or the plain moonlight; null without any. */
const moonToward = (place: Place): Vec3 | null => {
  if (place.sky) return hourOf(place)?.sky.moon.towardSeen ?? null;
  if (!place.moonlight || place.moonlight.illuminanceLux === 0) return null;
  const b = radiansFromDegrees(place.moonlight.bearingDegrees);
  const a = radiansFromDegrees(Math.max(place.moonlight.altitudeDegrees, 0.01));
  return [Math.sin(b) * Math.cos(a), Math.sin(a), -Math.cos(b) * Math.cos(a)];
};

/** The moon first: the others make room for it. */
const signsOf = (place: Place): SkySign[] => {
  const moon = moonToward(place);
  const core = place.sky ? hourOf(place)?.core.towardSeen : undefined;
  return [
    moon ? skySign('moon', moon) : null,
    core ? skySign('core', core) : null,
    ...place.glowDomes.map(({ bearingDegrees, name }) => glowSign(bearingDegrees, place.northDegrees, name)),
  ].filter((sign) => sign !== null);
};

const shapes = { moon: moonRing, core: coreShape, glow: glowShape } as const;

/** A short arrow from the moon into the drawing: the way its shadows fall. */
const ShadowArrow = ({ toward: [x, y] }: { toward: GroundPoint }) => {
  const [from, tip] = arrowReach;
  const end: GroundPoint = [-x * tip, -y * tip];
  const barb = (side: 1 | -1) =>
    `M${end[0]} ${end[1]}l${(x * 7 - side * y * 3.5).toFixed(2)} ${(y * 7 + side * x * 3.5).toFixed(2)}`;
  return <path d={`M${-x * from} ${-y * from}L${end[0]} ${end[1]}${barb(1)}${barb(-1)}`} />;
};

interface SkyMarksProps {
  readonly view: PlanView;
  readonly place: Place;
  /** The lamps with their words. */
  readonly lamps: readonly Box[];
}

/** At the plan’s edge: where the moon stands and which way its shadows fall, the core of the Milky Way, the glow of towns. */
export const SkyMarks = ({ view, place, lamps }: SkyMarksProps) => (
  <g className="sky-marks" aria-hidden="true">
    {edgeMarks(view.up, signsOf(place), dialBoxes(view, place.northDegrees), [...clockBoxes, ...lamps]).map(
      ({ kind, at, toward, text, textAt, anchor, isSlanting }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a drawing without a life of its own
        <g key={i} data-sky={kind}>
          <g transform={`translate(${at[0].toFixed(2)} ${at[1].toFixed(2)})`}>
            <path
              d={shapes[kind]}
              {...(kind === 'glow'
                ? { transform: `rotate(${((Math.atan2(toward[1], toward[0]) * 180) / Math.PI + 90).toFixed(1)})` }
                : {})}
            />
            {kind === 'moon' && isSlanting && <ShadowArrow toward={toward} />}
          </g>
          {text && (
            <text x={textAt[0]} y={textAt[1]} textAnchor={anchor}>
              {text}
            </text>
          )}
        </g>
      ),
    )}
  </g>
);
