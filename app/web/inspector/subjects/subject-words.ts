import { kitNamed } from '../../../../core/kits/all-kits.ts';
import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { partWords } from '../../state/edits/new-parts.ts';
import { sizeText } from '../parts/size-text.ts';

/** What kind of thing a subject is: the kit or the only part that it is made of; "" for parts put together by hand. */
const kindOf = ({ kit, parts }: Subject): string => {
  if (kit) return kitNamed(kit.name)?.label ?? kit.name;
  const [first] = parts;
  return parts.length === 1 && first ? partWords[first.kind] : '';
};

/** How much it is: "14 parts", or the size of the only one. */
const sizeOf = ({ kit, parts }: Subject): string => {
  const [first] = parts;
  if (parts.length !== 1 || !first || kit) return parts.length === 1 ? '1 part' : `${parts.length} parts`;
  return sizeText(first);
};

/** A name that only says the kind, as a new one does: "Hut", "Hut 2". */
const saysKind = (name: string, kind: string) => name.replace(/ \d+$/, '') === kind;

/** What a subject is, unless its name says so, and what is special about it: "hut · 14 parts · locked · Group 1". */
export const subjectWords = (subject: Subject): string => {
  const kind = kindOf(subject);
  return [
    saysKind(subject.name, kind) ? '' : kind.toLowerCase(),
    sizeOf(subject),
    subject.hidden ? 'hidden' : '',
    subject.locked ? 'locked' : '',
    subject.group ?? '',
  ]
    .filter((word) => word !== '')
    .join(' · ');
};

/** Whether a subject’s name, its kind, or its group holds the words that are looked for, or it is locked or hidden as they say. */
export const subjectMatches = (subject: Subject, search: string): boolean => {
  const { name, group, hidden, locked } = subject;
  const held =
    `${name} ${kindOf(subject)} ${group ?? ''} ${hidden ? 'hidden' : ''} ${locked ? 'locked' : ''}`.toLowerCase();
  return search
    .toLowerCase()
    .split(/\s+/)
    .every((word) => held.includes(word));
};
