import { useState } from 'react';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { useNightRun } from '../state/night-run.ts';
import { chooseNightTheme, useNightTheme } from '../state/night-theme.ts';
import { useReports } from '../state/reports.ts';
import { Notice } from '../ui/Notice.tsx';
import { NightLog } from './NightLog.tsx';
import { RunRoom } from './RunRoom.tsx';
import { useRunCard } from './use-run-card.ts';
import './night-run.css';

const closeNotice = () => useApp.getState().tell(null);
const themes = [
  ['usual', 'Usual'],
  ['red', 'Red'],
  ['dim', 'Dim white'],
] as const;

/** The page for the dark. It stands in place of all else, so that nothing is traced meanwhile. */
export const NightRun = () => {
  const { name } = useSetup();
  const scheme = useScheme();
  const card = useRunCard();
  const hasFailed = useReports((state) => state.failed);
  const theme = useNightTheme((state) => state.theme);
  const notice = useApp((state) => state.notice);
  const [showsLog, setShowsLog] = useState(false);
  return (
    <main className="night-run">
      {notice && <Notice key={notice.text} tone={notice.tone} text={notice.text} onClose={closeNotice} />}
      <header>
        <h1>
          {name} · {scheme.name}
        </h1>
        <button type="button" onClick={() => useNightRun.setState({ isOpen: false })}>
          Leave
        </button>
      </header>
      {showsLog && <NightLog card={card} />}
      {!showsLog && card && <RunRoom key={scheme.id} card={card} />}
      {!showsLog && !card && (
        <p className="quiet" role="status">
          {hasFailed ? 'This setup could not be read, so it has no card.' : 'The card is being worked out…'}
        </p>
      )}
      <footer>
        <button type="button" onClick={() => setShowsLog(!showsLog)}>
          {showsLog ? 'Tonight' : 'Nights'}
        </button>
        {themes.map(([id, words]) => (
          <button key={id} type="button" aria-pressed={theme === id} onClick={() => chooseNightTheme(id)}>
            {words}
          </button>
        ))}
      </footer>
    </main>
  );
};
