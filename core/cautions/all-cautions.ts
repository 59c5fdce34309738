import { cannotWalk } from './cannot-walk.ts';
import type { Caution, PassCase, PassRule, Severity } from './caution.ts';
import { burnt, tooDark } from './exposure.ts';
import { lampInFrame } from './lamp-in-frame.ts';
import { insideSubject, lampBelowGround } from './lamp-place.ts';
import { nearAxis } from './near-axis.ts';
import { personInFrame } from './person-in-frame.ts';
import { personShadow } from './person-shadow.ts';

const passRules: readonly PassRule[] = [
  nearAxis,
  lampInFrame,
  burnt,
  tooDark,
  lampBelowGround,
  insideSubject,
  cannotWalk,
  personInFrame,
  personShadow,
];

const order: Record<Severity, number> = { danger: 0, warning: 1, note: 2 };

/** Every caution about one pass, worst first. A lamp that is buried or enclosed is told of that alone. */
export const cautionsOf = (passCase: PassCase): Caution[] => {
  const found = passRules.flatMap((rule) => rule(passCase) ?? []);
  const misplaced = found.filter(({ code }) => code === 'lamp-below-ground' || code === 'inside-subject');
  return (misplaced.length > 0 ? misplaced : found).sort((a, b) => order[a.severity] - order[b.severity]);
};
