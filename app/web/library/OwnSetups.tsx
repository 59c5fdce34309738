import { useEffect, useRef, useState } from 'react';
import { pageConnection, useSaving } from '../state/page-saving.ts';
import { listSetups } from '../storage/list-setups.ts';
import type { SetupSummary } from '../storage/records.ts';
import { problemOf, type StorageProblemKind } from '../storage/storage-problem.ts';
import { OwnRow } from './OwnRow.tsx';
import { storageWords } from './saving-words.ts';

/** The setups that are kept in this browser. */
export const OwnSetups = ({ close }: { close: () => void }) => {
  const changes = useSaving((state) => state.changes);
  const openKey = useSaving((state) => state.key);
  const [list, setList] = useState<readonly SetupSummary[] | null>(null);
  const [problem, setProblem] = useState<StorageProblemKind | null>(null);
  const ref = useRef<HTMLUListElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: read again whenever something has changed
  useEffect(() => {
    let isWanted = true;
    pageConnection.use(listSetups).then(
      (found) => {
        if (!isWanted) return;
        setList(found);
        setProblem(null);
      },
      (error) => isWanted && setProblem(problemOf(error).kind),
    );
    return () => {
      isWanted = false;
    };
  }, [changes]);
  const now = Date.now();
  if (problem !== null) return <p className="quiet">{storageWords(problem)}</p>;
  if (list?.length === 0) return <p className="quiet">Nothing yet. What you change is kept here by itself.</p>;
  return (
    <ul className="own-setups" ref={ref} tabIndex={-1} aria-label="Your own setups">
      {list?.map((summary) => (
        <OwnRow
          key={summary.key}
          summary={summary}
          isOpen={summary.key === openKey}
          now={now}
          close={close}
          onRemoved={() => ref.current?.focus()}
        />
      ))}
    </ul>
  );
};
