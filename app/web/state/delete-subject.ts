import type { Subject } from '../../../core/setup/schema/setup.ts';
import { useApp } from './app-store.ts';
import { removeSubject } from './edits/remove-subject.ts';

/** Deletes a subject and says how to have it back; where it is locked, says that instead. */
export const deleteSubject = ({ id, name }: Pick<Subject, 'id' | 'name'>): void => {
  const { edit, tell, history } = useApp.getState();
  edit((setup) => removeSubject(setup, id));
  if (useApp.getState().history.present !== history.present)
    tell({ tone: 'done', text: `${name} is deleted. Undo brings it back.` });
};
