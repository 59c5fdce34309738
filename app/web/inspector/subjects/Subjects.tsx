import { useState } from 'react';
import { Empty } from '../../frames/Empty.tsx';
import { useApp, useScheme, useSetup } from '../../state/app-store.ts';
import { AddSubject } from './AddSubject.tsx';
import { SearchField } from './SearchField.tsx';
import { SubjectSlip } from './SubjectSlip.tsx';
import { subjectMatches } from './subject-words.ts';

/** So many are seen at a glance; more of them get a search. */
const mostWithoutSearch = 6;

/** The subjects as strips; the selected one is open. */
export const Subjects = () => {
  const { subjects } = useSetup();
  const scheme = useScheme();
  const selectedId = useApp(({ selection }) => (selection?.kind === 'subject' ? selection.subjectId : null));
  const [search, setSearch] = useState('');
  const hasSearch = subjects.length > mostWithoutSearch;
  const found = hasSearch ? subjects.filter((subject) => subjectMatches(subject, search)) : subjects;
  // what is open stays open
  const shown = subjects.filter((subject) => subject.id === selectedId || found.includes(subject));
  return (
    <section className="slips subjects" aria-labelledby="subjects-title">
      <div className="subjects-head">
        <h2 id="subjects-title">Subjects</h2>
        <span className="quiet">{subjects.length}</span>
        {hasSearch && <SearchField label="Find a subject" value={search} onChange={setSearch} />}
        <AddSubject schemeId={scheme.id} />
      </div>
      {subjects.length === 0 && (
        <Empty lacks="subject">Nothing stands here yet. Choose what you measured, and type its size.</Empty>
      )}
      {subjects.length > 0 && found.length === 0 && <p className="quiet">No subject matches.</p>}
      <ul>
        {shown.map((subject) => (
          <SubjectSlip key={subject.id} subject={subject} schemeId={scheme.id} isOpen={subject.id === selectedId} />
        ))}
      </ul>
    </section>
  );
};
