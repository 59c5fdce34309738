/** What breaks a line or can't be drawn: control characters, halves of characters, separators of lines and paragraphs. */
const unfitForLine = /[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/u;
const unfitForText = /(?![\t\n\r])[\p{Cc}\p{Cs}]/u;

/** Whether a text stands on one line, without control characters. */
export const isPlainLine = (text: string): boolean => !unfitForLine.test(text);

/** The same where lines may break and tabs may stand. */
export const isPlainText = (text: string): boolean => !unfitForText.test(text);

/**
 * Text cut to a length, whole characters only.
 *
 * @param most longest length in UTF-16 units, as the document counts
 */
export const cutTo = (text: string, most: number): string =>
  text.slice(0, Math.max(most, 0)).replace(/[\ud800-\udbff]$/, '');

/** Typed or pasted text as one line of the document: what is not plain becomes a space; nothing stands before or after. */
export const plainLine = (text: string, most: number): string =>
  cutTo(text.replace(new RegExp(`${unfitForLine.source}+`, 'gu'), ' ').trim(), most).trim();

/** Typed or pasted text as lines of the document: what is not plain goes; spaces and breaks stay as they are. */
export const plainLines = (text: string, most: number): string =>
  cutTo(text.replace(new RegExp(unfitForText.source, 'gu'), ''), most);
