/** What this machine keeps of the page's looks. Storage may be denied or full; then it lasts as long as the page. */
export const keptText = (key: string): string | null => {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
};

export const keepText = (key: string, text: string): void => {
  try {
    localStorage.setItem(key, text);
  } catch {
    // see above
  }
};
