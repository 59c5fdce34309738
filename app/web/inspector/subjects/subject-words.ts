import { kitNamed } from '../../../../core/kits/all-kits.ts';
import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { partWords } from '../../state/edits/new-parts.ts';

/** What a subject is: "Hut · 14 parts", "Block", "Scan". */
const kindOf = ({ kit, parts }: Subject): string => {
  const count = parts.length === 1 ? '1 part' : `${parts.length} parts`;
  if (kit) return `${kitNamed(kit.name)?.label ?? kit.name} · ${count}`;
  const [first] = parts;
  return parts.length === 1 && first ? partWords[first.kind] : count;
};

/** What a subject is, and what is special about it: "Hut · 14 parts · locked · Group 1". */
export const subjectWords = (subject: Subject): string =>
  [kindOf(subject), subject.hidden ? 'hidden' : '', subject.locked ? 'locked' : '', subject.group ?? '']
    .filter((word) => word !== '')
    .join(' · ');

/** Whether a subject’s name, what it is, or its group holds the words that are looked for. */
export const subjectMatches = (subject: Subject, search: string): boolean => {
  const held = `${subject.name} ${subjectWords(subject)}`.toLowerCase();
  return search
    .toLowerCase()
    .split(/\s+/)
    .every((word) => held.includes(word));
};
