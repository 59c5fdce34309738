const place = 'lampfall-open';

/**
 * What this tab has open: the key of a kept setup, `sample/` with the id of one that comes with the page, or "" for nothing
 * in particular. It outlives a reload of the tab, not the tab.
 */
export const markOpen = (what: string): void => {
  try {
    sessionStorage.setItem(place, what);
  } catch {
    // then the tab opens what was opened last in any
  }
};

/** null = nothing was marked, or the browser refuses. */
export const markedOpen = (): string | null => {
  try {
    return sessionStorage.getItem(place);
  } catch {
    return null;
  }
};

export const forgetOpen = (): void => {
  try {
    sessionStorage.removeItem(place);
  } catch {
    // nothing was marked
  }
};
