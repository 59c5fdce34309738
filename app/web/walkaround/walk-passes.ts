import type { Frame, Lamp, Pass, Scheme, Setup, Waypoint } from '../../../core/setup/schema/setup.ts';

/** A pass with all that its figures in the walkaround are drawn from. */
export interface WalkPass {
  readonly key: string;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  /** Where the lamp begins. */
  readonly place: Waypoint;
  readonly measuredBeams: Setup['measuredBeams'];
}

/** The passes of all frames of a scheme. */
export const walkPasses = ({ lamps, measuredBeams }: Setup, { frames }: Scheme): WalkPass[] =>
  frames.flatMap((frame) =>
    frame.passes.flatMap((pass): WalkPass[] => {
      const lamp = lamps.find(({ id }) => id === pass.lampId);
      const [place] = pass.waypoints;
      return lamp && place ? [{ key: `${frame.id}/${pass.id}`, frame, pass, lamp, place, measuredBeams }] : [];
    }),
  );
