import { create } from 'zustand';

/** Whether the page is the one for the dark: one pass at a time, big, and nothing else. */
export const useNightRun = create<{ readonly isOpen: boolean }>(() => ({ isOpen: false }));
