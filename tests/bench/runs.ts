/** What a bench of the page is asked for; the page’s own sizes where nothing is said. */
export interface Run {
  readonly bench: string;
  readonly query: Readonly<Record<string, string | number>>;
  /** Only when it is named: it takes too long for every time. */
  readonly isOnRequest?: boolean;
}

const small = { width: 320, height: 180 };

/** In software GL: small pictures, few rounds. */
export const softwareRuns: readonly Run[] = [
  { bench: 'rays', query: { ...small, rounds: 3, batch: 1 } },
  // the other tracer’s program alone takes software GL many minutes to compile
  { bench: 'converge', query: { width: 64, height: 36, budget: 20 }, isOnRequest: true },
  { bench: 'remix', query: { width: 640, height: 360, rounds: 5 } },
  { bench: 'readings', query: { rounds: 3 } },
  { bench: 'curves', query: { ...small, rounds: 3 } },
  { bench: 'growth', query: { ...small, rounds: 5 } },
  { bench: 'moved-subject', query: { ...small, frames: 20 } },
  { bench: 'moving-pass', query: { width: 64, height: 36 } },
  { bench: 'sweep', query: {} },
];
