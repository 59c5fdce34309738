import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';
import { infinityMetres } from '../../../core/units/focus-range.ts';
import { shareCamera } from '../state/edits/place-edits.ts';
import { likeFrame } from '../state/like-frame.ts';
import { metresText, shutterText, signed } from '../ui/words.ts';

/** Each setting of a frame in the words of the trade. */
const settings: readonly ((frame: Frame) => string)[] = [
  ({ aperture }) => `f/${Number(aperture.toFixed(1))}`,
  ({ seconds }) => `${shutterText(seconds)} s`,
  ({ iso }) => `ISO ${Math.round(iso)}`,
  ({ whiteBalance: { kelvin } }) => `${Math.round(kelvin)} K`,
  ({ whiteBalance: { tint } }) => `tint ${signed(tint)}`,
];

const focusWords = ({ focusMetres }: Frame): string =>
  `focus ${metresText(focusMetres >= infinityMetres ? null : focusMetres)}`;

/**
 * In which settings schemes are exposed otherwise than one of them, a sentence a scheme: "Front: f/5.6, ISO 200". Focus is
 * left out where cameras differ.
 */
export const exposureDifferences = (model: Scheme, others: readonly Scheme[]): string[] =>
  others.flatMap((scheme) => {
    const { name, frames } = scheme;
    const said = shareCamera(model, scheme) ? [...settings, focusWords] : settings;
    const differing = frames.flatMap((frame) => {
      const like = likeFrame(model, frame);
      const words = said.flatMap((say) => (like && say(like) !== say(frame) ? [say(frame)] : []));
      return words.length > 0 ? [`${frames.length > 1 ? `${frame.name} ` : ''}${words.join(', ')}`] : [];
    });
    return differing.length > 0 ? [`${name}: ${differing.join('; ')}`] : [];
  });
