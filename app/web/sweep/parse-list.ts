/**
 * Numbers in a row, each read by `parse`: "0.3, 1, 2.2 m", "shin, hip"; parted by commas, or by semicolons where commas
 * are decimal: "0,3; 1; 2,2".
 *
 * @returns null when any of them can't be read
 */
export const parseList = (text: string, parse: (part: string) => number | null): number[] | null => {
  const parts = text.split(text.includes(';') ? ';' : ',').map((part) => part.trim());
  // a comma left at the end asks for nothing
  if (parts.length > 1 && parts.at(-1) === '') parts.pop();
  const values = parts.map(parse);
  return values.every((value) => value !== null) ? values : null;
};
