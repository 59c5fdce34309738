import type { SavingNews } from '../state/saving-state.ts';
import type { StorageProblemKind } from '../storage/storage-problem.ts';

/** What is wrong with the browser's storage, as a sentence. */
export const storageWords = (problem: StorageProblemKind): string =>
  ({
    full: 'The browser’s storage is full.',
    denied: 'This browser lets the page keep nothing: it is a private window, or storage is switched off.',
    hangs: 'The browser’s storage does not answer.',
    newer: 'A newer Lampfall runs in another tab, and this page can keep nothing any more.',
    unreadable: 'Something in this setup could not be read again.',
    broken: 'The browser’s storage failed.',
  })[problem];

const whatToDo = (problem: StorageProblemKind): string =>
  ({
    full: 'Save them as a file, or delete a setup of your own. Each change tries again.',
    denied: 'Save them as a file before you close the page.',
    hangs: 'Save them as a file. Each change tries again.',
    newer: 'Save them as a file, then reload the page.',
    unreadable: 'What was kept before is still there. Undo the last change, or save it as a file.',
    broken: 'Save them as a file. Each change tries again.',
  })[problem];

/** News of keeping setups, in sentences. */
export const newsWords = (news: SavingNews): string => {
  switch (news.kind) {
    case 'problem':
      return `${storageWords(news.problem)} Your last changes are not kept. ${whatToDo(news.problem)}`;
    case 'second copy':
      return `“${news.name}” was changed elsewhere too. What you have here is now “${news.copyName}”; both are kept.`;
    case 'changed elsewhere':
      return `“${news.name}” was changed in another tab.`;
    case 'deleted elsewhere':
      return `“${news.name}” was deleted in another tab. Change it here, and it is kept again.`;
    case 'brought back':
      return `“${news.name}” had been deleted. It is kept again, with your change.`;
    case 'deleted':
      return `“${news.name}” is deleted.`;
    case 'not opened':
      return 'What you had open could not be opened just now. It is kept as it was.';
    case 'broken':
      return `“${news.name}” could not be opened: ${news.why}. It is kept as it is.`;
  }
};
