import { create } from 'zustand';

/** Whether the dialog that makes a link of the setup is open. */
export const useSharing = create<{ readonly isOpen: boolean }>(() => ({ isOpen: false }));
