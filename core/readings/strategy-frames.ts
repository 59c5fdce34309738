import { hyperfocalMm } from '../camera/depth-of-field.ts';
import { pixelPitchMicrometres } from '../camera/sensors.ts';
import { shortPixelRuleSeconds } from '../camera/star-rules.ts';
import type { Camera, Frame, Scheme } from '../setup/schema/setup.ts';
import { infinityMetres } from '../units/focus-range.ts';
import { exactFNumber, stepThird } from '../units/third-stops.ts';
import { cocOf } from './focus-plan.ts';

/**
 * Three ways to expose a foreground under stars (common practice, no published source): all in one frame, painted by hand;
 * dim lamps on stands, lit while the sky is exposed; separate painted frames at low ISO.
 */
export type Strategy = 'one-frame' | 'standing' | 'separate';

/** From here on a frame is exposed as for stars; up to the second, as for painting. Common practice, no published source. */
const starIso = 1600;
const paintIso = 800;
/** What is taken where a scheme has no such frame: usual star settings, and those of a painted frame. Common practice. */
const usualStars = { aperture: 2.8, iso: 6400 } as const;
const usualPaint = { aperture: 8, iso: 400 } as const;

/** Focus that has the stars sharp, and the land from as near as can be: the hyperfocal distance, in metres to the millimetre. */
const hyperfocalMetres = (camera: Camera, { aperture }: Frame): number => {
  const mm = hyperfocalMm(camera.focalLengthMm, exactFNumber(aperture), cocOf(camera));
  return Math.min(Math.ceil(mm) / 1000, infinityMetres);
};

/** The frame that a scheme exposes its stars in, without its passes; usual settings where there is none. */
export const starFrameOf = (camera: Camera, { frames }: Scheme): Frame => {
  const first = frames[0] as Frame;
  const own = frames.find(({ purpose }) => purpose === 'sky') ?? frames.find(({ iso }) => iso >= starIso);
  if (own) return { ...own, passes: [] };
  const rule = shortPixelRuleSeconds(
    camera.focalLengthMm,
    exactFNumber(usualStars.aperture),
    pixelPitchMicrometres(camera.sensor),
  );
  // a rule that ends right at a marking allows it
  const seconds = stepThird('seconds', rule * 1.01, -1);
  return { ...first, id: 'sky', name: 'Sky', ...usualStars, seconds, focusMetres: infinityMetres, passes: [] };
};

/** The same where the land is lit in it too: focused so that stars and as much land as can be are sharp. */
export const litStarFrameOf = (camera: Camera, scheme: Scheme): Frame => {
  const frame: Frame = { ...starFrameOf(camera, scheme), purpose: 'sky' };
  const reachesStars = frame.focusMetres >= hyperfocalMetres(camera, frame);
  const wasLit = scheme.frames.some(({ id, passes }) => id === frame.id && passes.length > 0);
  return reachesStars && !wasLit ? { ...frame, focusMetres: hyperfocalMetres(camera, frame) } : frame;
};

/** A frame to paint in, as the scheme has one, else at usual settings; focused where the pass's own frame is. */
export const paintFrameOf = ({ frames }: Scheme, own: Frame): Frame => {
  const painted = (frame: Frame) => frame.purpose !== 'sky' && frame.iso <= paintIso;
  const model = painted(own) ? own : frames.find(painted);
  const { aperture, iso, whiteBalance } = model ?? { ...usualPaint, whiteBalance: own.whiteBalance };
  return { ...own, purpose: 'painted', aperture, iso, whiteBalance, passes: [] };
};
