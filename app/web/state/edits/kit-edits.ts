import { kitNamed } from '../../../../core/kits/all-kits.ts';
import { type KitValues, ownFinish, subjectFromKit } from '../../../../core/kits/kit.ts';
import { isSameFinish } from '../../../../core/setup/finish-presets.ts';
import type { Setup, Subject } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { pruneScans } from './prune-scans.ts';
import { changeSubject, subjectNamed } from './subject-edits.ts';
import { withinLimits } from './subject-limits.ts';

/** Largest seed that the document takes. */
const maxSeed = 4294967295;

/** A subject from a kit; what the kit can't make of its numbers is refused in words. */
export const madeFromKit = (
  kitName: string,
  values: KitValues,
  seed: number,
  base: Pick<Subject, 'id' | 'name'> & Partial<Subject>,
): Subject => {
  const kit = kitNamed(kitName);
  if (!kit) throw new EditRefused('This program does not know the kit that the parts were made from.');
  try {
    return subjectFromKit(kit, values, seed, base);
  } catch (error) {
    // the parts were made, but the document does not take them
    if (error instanceof Error && error.name === 'ZodError')
      throw new EditRefused(`No ${kit.label.toLowerCase()} can be made from those numbers. Nothing was changed.`);
    throw error;
  }
};

/**
 * Makes a kit's parts anew from other numbers or another seed; name, place, turn, a finish that was chosen and all else of
 * the subject stay. A subject without a kit stays as it is.
 */
export const retuneKit = (
  setup: Setup,
  subjectId: string,
  to: { readonly values?: KitValues; readonly seed?: number },
): Setup => {
  const subject = subjectNamed(setup, subjectId);
  if (!subject?.kit) return setup;
  const { name, values, seed } = subject.kit;
  const kit = kitNamed(name);
  const { finish, ...rest } = subject;
  // a choice may bring its finish, such as light clothes; one that was chosen by hand stays
  const choosesFinish = kit?.fields.some(({ key, choices }) => choices && to.values?.[key] !== undefined);
  const base = kit && choosesFinish && isSameFinish(finish, ownFinish(kit, values, seed)) ? rest : subject;
  const made = madeFromKit(name, { ...values, ...to.values }, to.seed ?? seed, base);
  return withinLimits(pruneScans(changeSubject(setup, subjectId, () => made)));
};

/** Another one of its kind: the next seed. */
export const nextOfKit = (setup: Setup, subjectId: string): Setup => {
  const seed = subjectNamed(setup, subjectId)?.kit?.seed ?? 0;
  return retuneKit(setup, subjectId, { seed: seed >= maxSeed ? 1 : seed + 1 });
};
