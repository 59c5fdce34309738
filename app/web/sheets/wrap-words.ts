/** Width of a piece of text. */
export type TextWidth = (text: string) => number;

/** Breaks text at its spaces so that lines are no wider than they may be; a word that is wider stands alone. */
export const wrapWords = (text: string, width: number, widthOf: TextWidth): string[] => {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && widthOf(longer) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, line];
};
