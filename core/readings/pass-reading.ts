import type { AgreementReading } from './agreement-reading.ts';
import type { BeamReading } from './beam-reading.ts';
import type { ColourReading } from './colour-reading.ts';
import type { CountReading } from './count-reading.ts';
import type { EvennessReading } from './evenness-reading.ts';
import type { LensReading } from './lens-reading.ts';
import type { PaintReading } from './paint-reading.ts';
import type { PatchReading } from './patch-reading.ts';
import type { PersonReading } from './person-reading.ts';
import type { Raking } from './relief-reading.ts';
import type { RimReading } from './rim-reading.ts';
import type { ShadowReading } from './shadow-reading.ts';
import type { TargetReading } from './target-reading.ts';

/** All numbers of one pass. Names are those of `lampfall readings --json`. Angles in degrees, bearings from the scene's north. */
export interface PassReading extends EvennessReading {
  readonly passId: string;
  readonly lampId: string;
  /** Angle at the aim point between the directions to camera and lamp: 0 = on the camera's axis, 90 = side, 180 = behind. */
  readonly offAxisDegrees: number;
  /** "2:30": camera at six. */
  readonly clock: string;
  readonly elevationDegrees: number;
  readonly distanceMetres: number;
  /** Of the lamp over level ground, half-way through its on-time, where clock and distance are taken too. */
  readonly lampHeightMetres: number;
  /** null when the camera sees no surface at the aim point. */
  readonly target: TargetReading | null;
  readonly shadows: readonly ShadowReading[];
  readonly rim: RimReading;
  readonly lens: LensReading;
  /** Whoever holds the lamp; null when it stands. */
  readonly person: PersonReading | null;
  /**
   * On level ground under the aim point; `target` on the surface that the camera sees there; `patch` on what it sees of
   * the drawn patch, null without one, where it is not seen, and where the beam does not reach it.
   */
  readonly relief: Raking & { readonly target: Raking | null; readonly patch: PatchReading | null };
  readonly agreement: AgreementReading;
  /** The pass's dose over that of the moon in its frame, on the surface of `target`, stops; null where either gives none. */
  readonly overMoonStops: number | null;
  /** What the pass does at its best on its subject's face: 95th percentile of dose; null when that is not seen. */
  readonly bestDoseLuxSeconds: number | null;
  readonly count: CountReading;
  readonly beam: BeamReading;
  readonly colour: ColourReading;
  /** null when none of the light lands on what the camera sees of the subject. */
  readonly paint: PaintReading | null;
}
