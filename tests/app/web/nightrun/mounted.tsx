import { act, type ReactNode } from 'react';
import { createRoot } from 'react-dom/client';

Object.assign(globalThis, { IS_REACT_ACT_ENVIRONMENT: true });

/** Draws something into the document of a test, and presses what is in it by its words. */
export const mounted = (node: ReactNode) => {
  document.body.innerHTML = '<div></div>';
  const root = createRoot(document.body.firstElementChild as Element);
  act(() => root.render(node));
  const button = (words: string): HTMLButtonElement => {
    const found = [...document.querySelectorAll('button')].find(({ textContent }) => textContent === words);
    if (!found) throw new Error(`no button “${words}” in: ${document.body.textContent}`);
    return found;
  };
  return {
    button,
    press: (words: string) => {
      const pressed = button(words);
      pressed.focus();
      act(() => pressed.click());
    },
    leave: () => act(() => root.unmount()),
  };
};
