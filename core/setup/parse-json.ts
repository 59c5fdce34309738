import { jsonFaultOffset } from './json-fault.ts';
import { SetupError } from './setup-error.ts';

/** JSON as it stands in a file. Throws a `SetupError` with the line where it breaks off. */
export const parseJson = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    const line = text.slice(0, jsonFaultOffset(text)).split('\n').length;
    throw new SetupError(
      'syntax',
      `line ${line}`,
      'the text breaks off or has a stray character here; expected a whole file as Lampfall saves it, in JSON',
    );
  }
};
