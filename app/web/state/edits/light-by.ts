import type { Strategy } from '../../../../core/readings/strategy-frames.ts';
import { strategyPlan } from '../../../../core/readings/strategy-plan.ts';
import type { Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { cutTo, longestName } from './cut-to.ts';
import { EditRefused } from './edit-refused.ts';
import { maxSchemes } from './frame-edits.ts';
import { mostFrames } from './most-frames.ts';
import { freshName } from './plain-name.ts';
import { freshId } from './within.ts';

/** What the name of a scheme ends with that a strategy made. */
const endings: Record<Strategy, string> = {
  'one-frame': 'one frame',
  standing: 'standing lights',
  separate: 'painted frames',
};

/** "Side" gives "Side · one frame"; what another strategy put there goes. */
const nameOf = ({ name }: Scheme, strategy: Strategy, schemes: readonly Scheme[]): string => {
  const ending = ` · ${endings[strategy]}`;
  const stem = Object.values(endings).reduce((text, each) => text.replace(new RegExp(` · ${each}( \\d+)?$`), ''), name);
  const taken = schemes.map((scheme) => scheme.name);
  return freshName(taken, `${cutTo(stem, longestName - ending.length)}${ending}`);
};

/**
 * Lights a scheme by a strategy: a new scheme behind it with its lamps, places and gels, levels and counts set anew. The
 * one that it is made of stays, to be compared.
 *
 * @returns the setup and the id of the new scheme
 */
export const lightBy = (
  setup: Setup,
  schemeId: string,
  strategy: Strategy,
): { readonly setup: Setup; readonly schemeId: string } => {
  const at = setup.schemes.findIndex(({ id }) => id === schemeId);
  const scheme = setup.schemes[at];
  if (!scheme?.frames.some(({ passes }) => passes.length > 0))
    throw new EditRefused('There is no lamp in this scheme yet; add one first.');
  if (setup.schemes.length >= maxSchemes)
    throw new EditRefused(`A setup has at most ${maxSchemes} schemes; remove one first.`);
  const { scheme: lit } = strategyPlan(setup, scheme, strategy);
  if (lit.frames.length > mostFrames || lit.frames.some(({ passes }) => passes.length > mostFrames))
    throw new EditRefused(`That would take more than ${mostFrames} frames or passes.`);
  const id = freshId(setup.schemes, scheme.id);
  const made: Scheme = { ...lit, id, name: nameOf(scheme, strategy, setup.schemes) };
  return { setup: { ...setup, schemes: setup.schemes.toSpliced(at + 1, 0, made) }, schemeId: id };
};
