/** One look at the page between two rounds. */
export interface Look {
  readonly minute: number;
  /** What its script holds after a collection. */
  readonly heapMegabytes: number;
  /** What all processes of the browser hold of the machine's memory. */
  readonly residentMegabytes: number;
  /** Median and 95th percentile of the time between two frames while a lamp is dragged, in milliseconds. */
  readonly frameMedian: number;
  readonly frame95th: number;
}

/** What may grow by a tenth at most from the first third of the looks to the last. */
const mostGrowth = 0.1;
const watched: readonly (readonly [string, (look: Look) => number])[] = [
  ['script heap, MB', (look) => look.heapMegabytes],
  ['all processes, MB', (look) => look.residentMegabytes],
  ['frame, median ms', (look) => look.frameMedian],
  ['frame, 95th ms', (look) => look.frame95th],
];

export interface LongRunRow {
  readonly line: string;
  readonly holds: boolean;
}

/** Means of the thirds of the looks: the first fifth of all is warming up and counts for none. */
export const longRunRows = (looks: readonly Look[]): LongRunRow[] => {
  const kept = looks.slice(Math.floor(looks.length / 5));
  const third = (which: number, read: (look: Look) => number): number => {
    const part = kept.slice(Math.floor((which * kept.length) / 3), Math.floor(((which + 1) * kept.length) / 3));
    return part.reduce((sum, look) => sum + read(look), 0) / part.length;
  };
  return watched.map(([name, read]) => {
    const [first, middle, last] = [third(0, read), third(1, read), third(2, read)];
    const change = last / first - 1;
    // too few looks make no thirds: nothing holds then
    const holds = change <= mostGrowth;
    const means = [first, middle, last].map((mean) => mean.toFixed(1).padStart(8)).join('');
    const changed = `${change >= 0 ? '+' : ''}${(100 * change).toFixed(1)} %`;
    return { line: `  ${name.padEnd(20)} ${means}   ${changed} (bar: 10 %${holds ? '' : ', missed'})`, holds };
  });
};
