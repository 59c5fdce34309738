type Expected = 'value' | 'value or ]' | 'key' | 'key or }' | 'colon' | 'comma or end' | 'nothing';

const marks = '{}[],:';
const isBlank = (code: number): boolean => code === 32 || code === 9 || code === 10 || code === 13;
/** A text (anything from the space up but quote and backslash, or an escape), or a bare word or number. */
const token =
  /("[ !#-[\]-\uffff]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[ !#-[\]-\uffff]*)*")|(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;

const close = (bracket: string, open: string[]): Expected | null => {
  if (open.pop() !== bracket) return null;
  return open.length > 0 ? 'comma or end' : 'nothing';
};

/** What may come after a token, or null when the token may not stand here. `open` holds the brackets that wait for an end. */
const after = (expected: Expected, mark: string | undefined, isText: boolean, open: string[]): Expected | null => {
  if (expected === 'colon') return mark === ':' ? 'value' : null;
  if (expected === 'key' || expected === 'key or }') {
    if (isText) return 'colon';
    return expected === 'key or }' && mark === '}' ? close('{', open) : null;
  }
  if (expected === 'comma or end') {
    if (mark === ',') return open.at(-1) === '{' ? 'key' : 'value';
    return mark === '}' ? close('{', open) : mark === ']' ? close('[', open) : null;
  }
  if (expected === 'nothing') return null;
  if (mark === undefined) return open.length > 0 ? 'comma or end' : 'nothing';
  if (mark === ']' && expected === 'value or ]') return close('[', open);
  if (mark !== '{' && mark !== '[') return null;
  open.push(mark);
  return mark === '{' ? 'key or }' : 'value or ]';
};

/**
 * Where a text stops being JSON (RFC 8259), as an offset; its length when it only breaks off. Engines word their own
 * messages differently and often leave the place out, so the place is found here.
 */
export const jsonFaultOffset = (text: string): number => {
  const open: string[] = [];
  let expected: Expected = 'value';
  for (let at = 0; ; ) {
    while (isBlank(text.charCodeAt(at))) at++;
    const start = at;
    const mark = text.charAt(at);
    let next: Expected | null;
    // marks without the pattern: a hostile text may have millions of them
    if (mark !== '' && marks.includes(mark)) {
      next = after(expected, mark, false, open);
      at++;
    } else {
      token.lastIndex = at;
      const found = token.exec(text);
      next = found && after(expected, undefined, found[1] !== undefined, open);
      at = token.lastIndex;
    }
    if (!next) return start;
    expected = next;
  }
};
