import { plainLine } from '../../../../core/setup/plain-text.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';

type Card = Setup['card'];

/** What one types ends as one line, as long as the document takes it. */
const lineOf = (text: string): string => plainLine(text, 160).replace(/\s+/gu, ' ');

/** Changes how the field card is written. The same setup where nothing changes. */
export const setCard = (setup: Setup, part: Partial<Card>): Setup => {
  const card = { ...setup.card, ...part };
  const permission = lineOf(card.permission);
  const { lengths, paper, permission: before } = setup.card;
  const isSame = card.lengths === lengths && card.paper === paper && permission === before;
  return isSame ? setup : { ...setup, card: { ...card, permission } };
};
