import { lampDirection } from '../../../core/readings/direction.ts';
import type { Frame, Lamp, Pass, Scheme, Setup, Waypoint } from '../../../core/setup/schema/setup.ts';
import { clockText } from '../../../core/units/clock.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import { lengthWords } from './lengths.ts';

/** A pass as a small plan numbers and tells it. */
export interface PlanLamp {
  /** From one, through the frames in order. */
  readonly number: number;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  /** Where the lamp begins. */
  readonly place: Waypoint;
  /** Hours in [0, 12), camera at six. */
  readonly clockHours: number;
  /** From lamp to aim. */
  readonly distanceMetres: number;
}

/** The passes of a scheme in the order of their numbers. */
export const planLamps = (setup: Setup, scheme: Scheme): PlanLamp[] => {
  const camera = worldFromDocument((scheme.camera ?? setup.camera).position);
  const passes = scheme.frames.flatMap((frame) => frame.passes.map((pass) => ({ frame, pass })));
  return passes.flatMap(({ frame, pass }, i): PlanLamp[] => {
    const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
    const [place] = pass.waypoints;
    if (!lamp || !place) return [];
    const { clockHours, distanceMetres } = lampDirection(
      worldFromDocument(place.aim),
      camera,
      worldFromDocument(place.position),
    );
    return [{ number: i + 1, frame, pass, lamp, place, clockHours, distanceMetres }];
  });
};

/** A small plan in words: "Plan: Key at 3:00, 6.0 m; Fill at 8:00, 4.0 m". */
export const planSentence = (setup: Setup, scheme: Scheme): string => {
  const lamps = planLamps(setup, scheme).map(
    ({ pass, clockHours, distanceMetres }) =>
      `${pass.name} at ${clockText(clockHours)}, ${lengthWords(distanceMetres, 1)}`,
  );
  return `Plan: ${lamps.join('; ') || 'no lamps'}`;
};
