import { stopsFromMidGrey } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { degreesApart } from '../units/angle.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { StageSubject } from '../world/stage.ts';
import { type BlendPart, blendParts } from './blend-parts.ts';
import type { Caution, ReadPass, SchemeCase, SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

type Told = Caution & { readonly frameId: string };

/** A pass that lights a subject's face and throws its shadow into the picture. */
interface Caster {
  readonly read: ReadPass;
  readonly frameId: string;
  readonly subjectId: string;
  readonly bearingDegrees: number;
  readonly offAxisDegrees: number;
  /** At its best on the face, as on 18 % grey, stops from mid-grey, weighted as in the blend. */
  readonly stops: number;
}

const midGrey = 0.18;
const onGrey = (doseLuxSeconds: number, { worldFrame, weight }: BlendPart): number =>
  doseLuxSeconds > 0
    ? stopsFromMidGrey((doseLuxSeconds * midGrey) / Math.PI, worldFrame.exposure) + stopsFromRatio(weight)
    : Number.NEGATIVE_INFINITY;

const castersOf = (part: BlendPart): Caster[] =>
  part.passes.flatMap((read) => {
    const { rim, shadows, offAxisDegrees, bestDoseLuxSeconds } = read.reading;
    const shadow = shadows.find(({ subjectId }) => subjectId === rim.subjectId);
    // light from behind draws an edge; nobody asks where its shadow falls
    // where the frame does not count on the ground, neither does the shadow that lies there
    if (!shadow || !part.counts(-1) || offAxisDegrees >= limits.backLightDegrees) return [];
    if ((shadow.inFrameShare ?? 0) < limits.shadowInFrameShare) return [];
    const stops = onGrey(bestDoseLuxSeconds ?? 0, part);
    const { subjectId, bearingDegrees } = shadow;
    return stops < limits.tooDarkStops
      ? []
      : [{ read, frameId: part.frame.id, subjectId, bearingDegrees, offAxisDegrees, stops }];
  });

/** Side light from both sides is meant. */
const areTwoSided = (a: Caster, b: Caster): boolean =>
  Math.min(a.offAxisDegrees, b.offAxisDegrees) >= limits.twoSidedDegrees;

const nameOf = ({ world }: SchemeCase, subjectId: string): string =>
  (world.stage.subjects.find(({ id }) => id === subjectId) as StageSubject).name;

/** Keys of two frames, as strong as each other, that throw the shadow of one subject different ways. */
const betweenFrames = (schemeCase: SchemeCase, casters: readonly Caster[]): Told[] => {
  const keys = casters.filter((caster) =>
    casters.every(
      ({ frameId, subjectId, stops }) =>
        frameId !== caster.frameId || subjectId !== caster.subjectId || stops <= caster.stops,
    ),
  );
  const limit = limits.shadowsApartDegrees;
  for (const [i, a] of keys.entries())
    for (const b of keys.slice(i + 1)) {
      if (a.frameId === b.frameId || a.subjectId !== b.subjectId || areTwoSided(a, b)) continue;
      const value = degreesApart(a.bearingDegrees, b.bearingDegrees);
      // the weaker one is a fill
      if (value <= limit || Math.abs(a.stops - b.stops) >= limits.fillStops) continue;
      const { pass } = b.read;
      return [
        {
          code: 'shadows-disagree',
          severity: 'note',
          passId: pass.id,
          frameId: b.frameId,
          message: `${pass.name}: in the blend “${nameOf(schemeCase, b.subjectId)}” throws two shadows ${value.toFixed(0)}° apart, this one and that of “${a.read.pass.name}”, about as strong. Light both from one side, or make one a fill, ${limits.fillStops} stops or more under the other.`,
          value,
          limit,
        },
      ];
    }
  return [];
};

/** A lamp at least as strong as a moon that shows, whose shadow points another way. */
const againstMoon = (schemeCase: SchemeCase, parts: readonly BlendPart[], casters: readonly Caster[]): Told[] => {
  const limit = limits.againstMoonDegrees;
  // what stands square to it, wherever the camera looks from: behind a subject its shadow comes toward the lens
  const moon = Math.max(
    Number.NEGATIVE_INFINITY,
    ...parts.flatMap((part) =>
      part.worldFrame.lights
        .filter(({ source }) => part.counts(-1) && source.kind === 'moon')
        .map(({ strength, seconds }) => onGrey(luminanceOfLinearSrgb(strength) * seconds, part)),
    ),
  );
  if (moon < limits.tooDarkStops) return [];
  for (const { read, frameId, subjectId, stops } of [...casters].sort((a, b) => b.stops - a.stops)) {
    const value = read.reading.agreement.moonDegrees;
    if (value === null || value <= limit || stops < moon) continue;
    const { pass } = read;
    return [
      {
        code: 'shadows-disagree',
        severity: 'note',
        passId: pass.id,
        frameId,
        message: `${pass.name}: the shadow of “${nameOf(schemeCase, subjectId)}” points ${value.toFixed(0)}° away from the one in moonlight, and the lamp is ${(stops - moon).toFixed(1)} stops stronger. Light it from the moon’s side, or keep the lamp under the moon, as a fill.`,
        value,
        limit,
      },
    ];
  }
  return [];
};

/** Lights that contradict each other by the shadows that they throw: keys of different frames, or a key and the moon. */
export const shadowsDisagree: SchemeRule = (schemeCase) => {
  const parts = blendParts(schemeCase);
  const casters = parts.flatMap(castersOf);
  return [...betweenFrames(schemeCase, casters), ...againstMoon(schemeCase, parts, casters)];
};
