/** Whether a key is meant for half-typed text, which undoes its own letters: fields that are at rest say `data-draft="false"`. */
export const isTyping = (target: EventTarget | null): boolean =>
  (target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement) &&
  target.getAttribute('data-draft') !== 'false';
