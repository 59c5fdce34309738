import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { framesShown } from '../state/frames-shown.ts';
import { metresText, shutterText } from '../ui/words.ts';

const exposureOf = ({ aperture, seconds, iso, whiteBalance }: Frame): string[] => [
  `f/${Number(aperture.toFixed(1))}`,
  `${shutterText(seconds)} s`,
  `ISO ${Math.round(iso)}`,
  `${Math.round(whiteBalance.kelvin)} K`,
];

/**
 * Camera and exposure of what is shown of a scheme: "24 mm, 1.5 m high · f/8, 10 s, ISO 400, 4200 K".
 *
 * @param shown frame shown, or the one like it; null shows the blend
 */
export const settingWords = (setup: Setup, scheme: Scheme, shown: Frame | null): string => {
  const { focalLengthMm, position } = scheme.camera ?? setup.camera;
  // a blend may name a frame twice
  const frames = [...new Set(framesShown(scheme, shown).map(({ frame }) => frame))];
  const exposures = frames.map((frame) => {
    const words = exposureOf(frame).join(', ');
    return frames.length > 1 ? `${frame.name}: ${words}` : words;
  });
  return [`${Number(focalLengthMm.toFixed(1))} mm, ${metresText(position[2])} high`, ...exposures].join(' · ');
};
