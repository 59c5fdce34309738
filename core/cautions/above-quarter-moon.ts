import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { emitterPeakPerLumen } from '../photometry/emitter.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { ReadPass, SchemeRule } from './caution.ts';
import { limits } from './limits.ts';
import { isStarFrame } from './star-frame.ts';

/** Where one of these is said of a pass, the lamp is to be weaker anyway. */
const weakerAnyway = ['burnt', 'unreachable-level'];

/** Lux where a lamp points, on a surface that faces it: what a rim gets, whose face is dark to the camera. */
const pointedLux = ({ light, reading }: ReadPass): number => {
  const lumens = luminanceOfLinearSrgb(light.strength);
  return (lumens * emitterPeakPerLumen(light.source.emitter)) / reading.distanceMetres ** 2;
};

/** A standing light in a star frame is brighter on its subject than a quarter moon. */
export const aboveQuarterMoon: SchemeRule = ({ scheme, frames }) =>
  frames.flatMap(({ frame, passes }) =>
    passes.flatMap((read) => {
      const { pass, light, reading, cautions } = read;
      const stands = pass.held === 'stand' && pass.off - pass.on >= limits.standingShare * frame.seconds;
      if (!stands || !isStarFrame(scheme, frame)) return [];
      const onFace = (reading.bestDoseLuxSeconds ?? 0) / light.seconds;
      const isRim = reading.offAxisDegrees >= limits.backLightDegrees;
      const value = isRim ? Math.max(onFace, pointedLux(read)) : onFace;
      const limit = limits.quarterMoonLux;
      if (value <= limit || cautions.some(({ code }) => weakerAnyway.includes(code))) return [];
      return [
        {
          code: 'above-quarter-moon',
          severity: 'note' as const,
          passId: pass.id,
          frameId: frame.id,
          message: `${pass.name}: a standing light with up to ${value.toPrecision(2)} lx on the subject; a quarter moon gives 0.01 to ${limit} lx. Some places allow no more: ask locally, or dim it by ${stopsFromRatio(value / limit).toFixed(1)} stops.`,
          value,
          limit,
        },
      ];
    }),
  );
