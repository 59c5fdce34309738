import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { ratioFromStops, stopsFromRatio } from '../units/stops.ts';
import type { WorldLight } from '../world/world.ts';
import type { FaceLight } from './face-light.ts';
import { percentile } from './percentile.ts';

/** Share of the face that a light's best is taken at: the greatest of all would hang on a single ray. */
const bestShare = 0.95;

/**
 * What lights do together at their best on a subject's face: the 95th percentile of dose over all that the camera sees of
 * it, lit or not, lux seconds; 0 when less than a twentieth of the face is lit, null when the camera does not see it. Of
 * one light it goes with level and seconds in proportion.
 *
 * @param lights each with its light on the same face, as `faceLight` gives it
 */
export const bestDose = (
  lights: readonly (readonly [light: Pick<WorldLight, 'strength' | 'seconds'>, face: FaceLight])[],
): number | null => {
  const points = lights[0]?.[1] ?? [];
  if (points.length === 0) return null;
  const doses = points.map((_, p) =>
    lights.reduce(
      (sum, [{ strength, seconds }, face]) =>
        sum + (face[p] as FaceLight[number]).lux * luminanceOfLinearSrgb(strength) * seconds,
      0,
    ),
  );
  return percentile(doses, bestShare);
};

/** What is known of a pass when key and fill are looked for. */
export interface PassDose {
  readonly passId: string;
  /** Subject that the pass is about; null if none. */
  readonly subjectId: string | null;
  /** At its best on the subject's face; null when that is not seen. */
  readonly bestDoseLuxSeconds: number | null;
}

/** Best doses on a subject's face, lux seconds; null when the camera does not see it. Asked for only where they decide. */
export interface FaceDoses {
  readonly ofPass: (passId: string, subjectId: string) => number | null;
  /** Of moon and sky together. */
  readonly ofAmbient: (subjectId: string) => number | null;
}

/** The subject that a frame's passes light most, and what each does at its best there, whatever it is aimed at. */
export interface LitSubject {
  readonly subjectId: string;
  /** Strongest first, those that do nothing left out; never empty. */
  readonly doses: readonly { readonly passId: string; readonly luxSeconds: number }[];
}

/** Finds the subject of the pass that does most on its own; null when none does anything on one. */
export const mostLitSubject = (passes: readonly PassDose[], ofPass: FaceDoses['ofPass']): LitSubject | null => {
  let [subjectId, most]: [string | null, number] = [null, 0];
  for (const pass of passes)
    if (pass.subjectId !== null && (pass.bestDoseLuxSeconds ?? 0) > most)
      [subjectId, most] = [pass.subjectId, pass.bestDoseLuxSeconds as number];
  if (subjectId === null) return null;
  const found = subjectId;
  const doses = passes.map(({ passId, subjectId: own, bestDoseLuxSeconds }) => ({
    passId,
    luxSeconds: (own === found ? bestDoseLuxSeconds : ofPass(passId, found)) ?? 0,
  }));
  return {
    subjectId: found,
    doses: doses.filter(({ luxSeconds }) => luxSeconds > 0).sort((a, b) => b.luxSeconds - a.luxSeconds),
  };
};

/** The two lights that model a frame's subject, and how far they lie apart. */
export interface KeyToFill {
  /** Key over fill, each at its best on the same face, -0.05 at least; null when there is no key or no fill. */
  readonly keyToFillStops: number | null;
  /** The pass that does most on the subject that is lit most; null when none does anything. */
  readonly keyPassId: string | null;
  /** The pass that does next most there, whatever it is aimed at; null when the fill is moon and sky together. */
  readonly fillPassId: string | null;
}

/** Lights within a twentieth of a stop count as equal: then the one that stands first is the key, not chance. */
const equalShare = ratioFromStops(-0.05);

/**
 * Finds key and fill among the passes of a frame. Ratios of key to fill are common practice, no published source; in
 * stops they are log2.
 */
export const keyToFill = (passes: readonly PassDose[], { ofPass, ofAmbient }: FaceDoses): KeyToFill => {
  const lit = mostLitSubject(passes, ofPass);
  const [strongest] = lit?.doses ?? [];
  if (!lit || !strongest) return { keyToFillStops: null, keyPassId: null, fillPassId: null };
  const isAsStrong = (passId: string) =>
    lit.doses.some((each) => each.passId === passId && each.luxSeconds >= strongest.luxSeconds * equalShare);
  // the strongest itself is among them
  const first = passes.find(({ passId }) => isAsStrong(passId)) as PassDose;
  const key = lit.doses.find(({ passId }) => passId === first.passId) as typeof strongest;
  const fill = lit.doses.find((each) => each !== key);
  const dose = fill?.luxSeconds ?? ofAmbient(lit.subjectId) ?? 0;
  return {
    keyToFillStops: dose > 0 ? stopsFromRatio(key.luxSeconds / dose) : null,
    keyPassId: key.passId,
    fillPassId: fill?.passId ?? null,
  };
};
