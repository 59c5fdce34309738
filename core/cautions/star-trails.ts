import { pixelPitchMicrometres } from '../camera/sensors.ts';
import type { StarRule } from '../camera/star-rules.ts';
import { trailPixels } from '../camera/star-trail.ts';
import type { FrameCase, SchemeRule } from './caution.ts';
import { limits } from './limits.ts';
import { isStarFrame } from './star-frame.ts';

const ruleNamed = ({ stars }: FrameCase, name: string): StarRule =>
  stars.rules.find((rule) => rule.name === name) as StarRule;

const secondsText = (seconds: number): string => `${seconds < 3 ? seconds.toFixed(1) : Math.floor(seconds)} s`;

/** Stars draw lines, clearly past the loosest rule in use. Of several star frames the one with the longest is told. */
export const starTrails: SchemeRule = ({ setup, scheme, frames }) => {
  const [worst] = frames
    .filter(({ frame }) => isStarFrame(scheme, frame))
    .sort((a, b) => b.stars.trailPixels - a.stars.trailPixels);
  if (!worst) return [];
  const [loose, strict] = ['500 rule', 'pixel rule, short form'].map((name) => ruleNamed(worst, name)) as [
    StarRule,
    StarRule,
  ];
  // what that rule lets through is the trail that it gives at the equator
  const { focalLengthMm, sensor } = scheme.camera ?? setup.camera;
  const allowed = trailPixels(focalLengthMm, loose.seconds, pixelPitchMicrometres(sensor), 0);
  const [value, limit] = [worst.stars.trailPixels, allowed * limits.starTrailRatio];
  if (value <= limit) return [];
  const { id, name } = worst.frame;
  const longest = worst.stars.seen?.longest.trailPixels ?? value;
  const inCorners = longest > 1.1 * value ? `, up to ${longest.toFixed(0)} toward the corners` : '';
  return [
    {
      code: 'star-trails',
      severity: 'note',
      frameId: id,
      message: `${name}: stars draw lines of ${value.toFixed(0)} pixels${inCorners}. For short ones keep to ${secondsText(loose.seconds)} (500 rule), for points to ${secondsText(strict.seconds)} (pixel rule); leave it if you want trails.`,
      value,
      limit,
    },
  ];
};
