import type { Gel } from '../setup/schema/setup.ts';
import { plainCell, type SweepCell } from './cell.ts';
import type { FoundPass } from './pass-at.ts';
import type { GelStack } from './sweep-plan.ts';

const copyOf = (gel: Gel): Gel => ({ ...gel, colour: gel.colour ? [...gel.colour] : null });

/** The pass with each stack in place of its gels, its cloth and snoot left on. */
export const gelCells = ({ pass, lamp }: FoundPass, stacks: readonly GelStack[]): SweepCell[] =>
  stacks.map(({ name, gels }, c) => plainCell(`gels-0-${c}`, lamp.name, name, { ...pass, gels: gels.map(copyOf) }));
