import type { Frame, Setup } from '../../../../core/setup/schema/setup.ts';
import { blendWithCopies } from './blend-with-copies.ts';
import { cutTo, longestName } from './cut-to.ts';
import { focusAt } from './frame-edits.ts';
import { withRoom } from './frame-list.ts';
import { changeScheme, type FramePlace, freshId } from './within.ts';

const focusMetres = (metres: number | null): string =>
  metres === null ? '∞' : `${metres.toFixed(metres < 10 ? 2 : metres < 100 ? 1 : 0)} m`;

/** "Painted · focus 2.1 m"; a focus that stood there goes. */
const nameOf = (name: string, metres: number | null): string => {
  const ending = ` · focus ${focusMetres(metres)}`;
  return `${cutTo(name.replace(/ · focus [\d.∞]+( m)?$/, ''), longestName - ending.length)}${ending}`;
};

/**
 * Makes a focus stack of a frame: it is focused at the first distance, and copies of it, passes and all, stand behind it,
 * one at each of the others. They count in the blend as it does.
 *
 * @param distancesMetres near to far; null = infinity
 */
export const focusFrames = (
  setup: Setup,
  { schemeId, frameId }: FramePlace,
  distancesMetres: readonly (number | null)[],
): Setup => {
  const [first, ...others] = distancesMetres;
  if (first === undefined) return setup;
  let made: string[] = [];
  const copied = changeScheme(setup, schemeId, (scheme) => {
    const at = scheme.frames.findIndex(({ id }) => id === frameId);
    const frame = scheme.frames[at];
    if (!frame) return scheme;
    withRoom(scheme, others.length);
    const copies: Frame[] = [];
    for (const metres of others)
      copies.push({
        ...frame,
        id: freshId([...scheme.frames, ...copies], frame.id),
        name: nameOf(frame.name, metres),
      });
    made = copies.map(({ id }) => id);
    const named = { ...frame, name: nameOf(frame.name, first) };
    return {
      ...scheme,
      frames: scheme.frames.toSpliced(at, 1, named, ...copies),
      blend: blendWithCopies(scheme.blend, frameId, made),
    };
  });
  if (copied === setup) return setup;
  return [frameId, ...made].reduce(
    (next, id, i) => focusAt(next, { schemeId, frameId: id }, distancesMetres[i] as number | null),
    copied,
  );
};
