import { createContext } from 'react';

/** Told when an arrow key goes down in a field and comes up again, so that a key held down can count as one change. */
export const StepGesture = createContext<{ readonly begin: () => void; readonly end: () => void }>({
  begin: () => undefined,
  end: () => undefined,
});
