type Loose = Record<string, unknown>;

/** What would run, load or call if any of it were taken for markup, script, style or an address. */
const evil = [
  '<script>window.hit=1</script>',
  '<img src=x onerror="window.hit=1">',
  '<svg onload=window.hit=1><use href="https://lampfall.invalid/x#y"/></svg>',
  '"><iframe srcdoc="<script>parent.hit=1</script>">',
  "';window.hit=1;//",
  'javascript:window.hit=1',
  'url(https://lampfall.invalid/x)',
  '{{constructor.constructor("window.hit=1")()}}',
  '</title><script src=https://lampfall.invalid/x></script>',
  'https://lampfall.invalid/x',
  '\u202egnp.exe\u202c',
  '\u2066\u2067\u200b\u200f\ufeff',
  '\u0000\u0007\u001b[31m',
  '\ud800',
  'a\udc00b',
  'Z\u0351\u036b\u0343'.repeat(20),
  '__proto__',
  'constructor',
];
const numbers = [
  '1e308',
  '-1e308',
  '1e400',
  '-1e400',
  '5e-324',
  '1e21',
  '-0',
  '9007199254740993',
  '0.1',
  '-1',
  '2147483648',
];
const protoKeys = [
  '"__proto__":{"polluted":1}',
  '"constructor":{"prototype":{"polluted":1}}',
  '"toString":1',
  '"hasOwnProperty":1,"__proto__":[]',
];

/** Any place in a document: its owner and key. */
const placesIn = (value: unknown, found: [Loose, string][] = []): [Loose, string][] => {
  if (typeof value === 'object' && value !== null)
    for (const [key, child] of Object.entries(value)) {
      found.push([value as Loose, key]);
      placesIn(child, found);
    }
  return found;
};

/** One hostile JSON text made of a good one. */
export const hostileTexts = (good: string, random: () => number): { readonly sort: string; readonly text: string } => {
  const upTo = (n: number) => Math.floor(random() * n);
  const one = <T>(list: readonly T[]): T => list[upTo(list.length)] as T;
  const document = JSON.parse(good) as Loose;
  const places = placesIn(document);
  const withNumber = () => {
    const [owner, key] = one(places.filter(([owner, key]) => typeof owner[key] === 'number'));
    owner[key] = '@number';
    return JSON.stringify(document).replace('"@number"', one(numbers));
  };
  const withText = () => {
    const texts = places.filter(([owner, key]) => typeof owner[key] === 'string');
    // names and notes most of all, for they are what is shown
    const shown = texts.filter(([, key]) => key === 'name' || key === 'note');
    const [owner, key] = one(random() < 0.7 ? shown : texts);
    owner[key] = random() < 0.5 ? one(evil) : `${owner[key]} ${one(evil)}`.slice(0, 80);
    return JSON.stringify(document);
  };
  const withKey = () => {
    const [owner, key] = one(places.filter(([owner]) => !Array.isArray(owner)));
    const child = owner[key];
    owner[key] = '@key';
    return JSON.stringify(document).replace('"@key"', `${JSON.stringify(child)},${one(protoKeys)}`);
  };
  const deep = () => {
    const depth = 10 ** (2 + upTo(4));
    const [open, close] = one([
      ['[', ']'],
      ['{"a":', '}'],
    ] as const);
    const nest = open.repeat(depth) + (open === '[' ? '' : '1') + (random() < 0.7 ? close.repeat(depth) : '');
    if (random() < 0.3) return nest;
    const [owner, key] = one(places);
    owner[key] = '@deep';
    return JSON.stringify(document).replace('"@deep"', nest);
  };
  const crowd = () => {
    const [owner, key] = one(places.filter(([owner, key]) => Array.isArray(owner[key])));
    const list = owner[key] as unknown[];
    owner[key] = Array.from({ length: 10 ** (1 + upTo(3)) }, (_, i) => list[i % Math.max(list.length, 1)] ?? i);
    return JSON.stringify(document);
  };
  const long = () => {
    const [owner, key] = one(places.filter(([owner, key]) => typeof owner[key] === 'string'));
    owner[key] = one(evil).repeat(10 ** (1 + upTo(3)));
    return JSON.stringify(document);
  };
  const retyped = () => {
    const [owner, key] = one(places);
    owner[key] = one([null, true, [], {}, '', 0, [[[]]], { length: 1e9 }, { toJSON: 1 }, '0'.repeat(50)]);
    return JSON.stringify(document);
  };
  const scan = () => {
    document['scans'] = [
      { id: 'scan', name: 'Scan', data: one(['AAAA', '!', 'eJw', 'A'.repeat(100_000), '../../etc']) },
    ];
    return JSON.stringify(document);
  };
  const noise = () => {
    const text = JSON.stringify(document);
    const at = upTo(text.length);
    return text.slice(0, at) + one(['\0', '\ufeff', '}', ']', '"', '\\u', '/*', one(evil)]) + text.slice(at + upTo(20));
  };
  const [sort, make] = one([
    ['odd number', withNumber],
    ['markup or script in a text', withText],
    ['markup or script in a text', withText],
    ['key of prototypes', withKey],
    ['deep nesting', deep],
    ['crowded list', crowd],
    ['long text', long],
    ['another type', retyped],
    ['false scan', scan],
    ['broken JSON', noise],
  ] as const);
  return { sort, text: make() };
};
