import { parseLm63 } from '../../core/photometry/lm63/parse-lm63.ts';

/** Times of reading one large photometric file. */
export interface Lm63ParseTimes {
  readonly bytes: number;
  readonly values: number;
  readonly firstMs: number;
  readonly medianMs: number;
}

/** An invented file of about 2 MB: every degree off the axis, many planes. */
const largeFile = (): { text: string; values: number } => {
  const [verticals, planes] = [181, 1660];
  const vertical = Array.from({ length: verticals }, (_, v) => v);
  const horizontal = Array.from({ length: planes }, (_, h) => ((h * 360) / (planes - 1)).toFixed(3));
  const rows = horizontal.map((_, h) =>
    vertical.map((v) => (1000 * Math.abs(Math.cos((v * Math.PI) / 360)) + (h % 7)).toFixed(2)).join(' '),
  );
  const head = `IES:LM-63-2019\n[TEST] bench\nTILT=NONE\n1 -1 1 ${verticals} ${planes} 1 2 0 0 0\n1 1 10\n`;
  return {
    text: `${head}${vertical.join(' ')}\n${horizontal.join(' ')}\n${rows.join('\n')}\n`,
    values: verticals * planes,
  };
};

export const lm63ParseTimes = (rounds = 9): Lm63ParseTimes => {
  const { text, values } = largeFile();
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    parseLm63(text);
    return performance.now() - start;
  });
  const sorted = [...times].sort((a, b) => a - b);
  return { bytes: text.length, values, firstMs: times[0] ?? 0, medianMs: sorted[Math.floor(rounds / 2)] ?? 0 };
};
