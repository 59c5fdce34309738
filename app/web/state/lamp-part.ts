import { create } from 'zustand';

/** Whether the part about the lamp itself stands open in slips; the same for all of them, as long as the page lives. */
export const useLampPart = create<{ readonly isOpen: boolean }>(() => ({ isOpen: false }));
