/**
 * As ref of words that hang from a field: puts them under it, but so far left that they end within the window. Until then
 * they lie off to the left (`.field-problem`), where they make no page wider: a phone would zoom out, and stay so.
 */
export const withinWindow = (words: HTMLElement | null): void => {
  if (!words) return;
  const left = words.offsetParent?.getBoundingClientRect().left ?? 0;
  const over = left + words.offsetWidth + 4 - document.documentElement.clientWidth;
  words.style.translate = `${-Math.min(Math.max(over, 0), Math.max(left - 4, 0))}px`;
};
