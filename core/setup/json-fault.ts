type Expected = 'value' | 'value or ]' | 'key' | 'key or }' | 'colon' | 'comma or end' | 'nothing';

const blank = /[ \t\n\r]*/y;
/** A mark, a text (anything from the space up but quote and backslash, or an escape), or a bare word or number. */
const token =
  /([{}[\],:])|("[ !#-[\]-\uffff]*(?:\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})[ !#-[\]-\uffff]*)*")|(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;

/** What may come after a token, or null when the token may not stand here. `open` holds the brackets that wait for an end. */
const after = (expected: Expected, mark: string | undefined, isText: boolean, open: string[]): Expected | null => {
  const close = (bracket: string): Expected | null => {
    if (open.pop() !== bracket) return null;
    return open.length > 0 ? 'comma or end' : 'nothing';
  };
  if (expected === 'colon') return mark === ':' ? 'value' : null;
  if (expected === 'key' || expected === 'key or }') {
    if (isText) return 'colon';
    return expected === 'key or }' && mark === '}' ? close('{') : null;
  }
  if (expected === 'comma or end') {
    if (mark === ',') return open.at(-1) === '{' ? 'key' : 'value';
    return mark === '}' ? close('{') : mark === ']' ? close('[') : null;
  }
  if (expected === 'nothing') return null;
  if (mark === undefined) return open.length > 0 ? 'comma or end' : 'nothing';
  if (mark === ']' && expected === 'value or ]') return close('[');
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
  for (let at = 0; ; at = token.lastIndex) {
    blank.lastIndex = at;
    blank.test(text);
    const start = blank.lastIndex;
    token.lastIndex = start;
    const found = token.exec(text);
    const next: Expected | null = found && after(expected, found[1], found[2] !== undefined, open);
    if (!next) return start;
    expected = next;
  }
};
