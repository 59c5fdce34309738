/** The room, which comes when it is wanted. */
export const loadNightRun = async () => ({ default: (await import('./NightRun.tsx')).NightRun });

/** Has its file come while there is a network. */
export const fetchNightRunFiles = async (): Promise<void> => {
  await loadNightRun().catch(() => undefined);
};
