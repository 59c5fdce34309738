import { create } from 'zustand';

/** How long a night goes on, in hours. */
export const nightHours = 12;

interface NightRunState {
  /** Whether the page is the one for the dark: one pass at a time, big, and nothing else. */
  readonly isOpen: boolean;
  /** Whether it shows the log of nights. */
  readonly showsLog: boolean;
  /** Stops what is counted; null when nothing is. */
  readonly stopCounting: (() => void) | null;
  /** Selector of what it was opened with, which takes the focus again. */
  readonly opener: string;
  /** When frames without a lamp were exposed, by setup, scheme and frame, in milliseconds since 1970. The log has passes only. */
  readonly exposedAt: Readonly<Record<string, number>>;
}

export const useNightRun = create<NightRunState>(() => ({
  isOpen: false,
  showsLog: false,
  stopCounting: null,
  opener: '',
  exposedAt: {},
}));
