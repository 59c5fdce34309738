let isAsked = false;

/** Asks the browser, once, not to clear the store away when it runs short of room. Whatever it answers, work goes on. */
export const askToPersist = async (): Promise<void> => {
  if (isAsked) return;
  isAsked = true;
  try {
    if (!(await navigator.storage.persisted())) await navigator.storage.persist();
  } catch {
    // an older browser, or a page that is not served securely
  }
};
