import { useEffect } from 'react';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { leaveNightRun, openNights, stepBack } from '../state/night-pages.ts';
import { useNightRun } from '../state/night-run.ts';
import { chooseNightTheme, nightThemes, useNightTheme } from '../state/night-theme.ts';
import { useReports } from '../state/reports.ts';
import { Notice } from '../ui/Notice.tsx';
import { useDroppedFile } from '../ui/use-dropped-file.ts';
import { NightLog } from './NightLog.tsx';
import { RunRoom } from './RunRoom.tsx';
import { useRunCard } from './use-run-card.ts';
import './night-run.css';

const closeNotice = () => useApp.getState().tell(null);

/** The run goes by the plan that it was opened with. */
const refuseFile = ({ name }: File) =>
  useApp.getState().tell({
    tone: 'problem',
    text: `${name} was not opened. No files are taken during the run: leave it first.`,
  });

const useEscape = () => {
  useEffect(() => {
    const onKeyDown = ({ key }: KeyboardEvent) => {
      if (key === 'Escape') stepBack();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
};

/** Whoever comes back is where they went from. */
const useFocusBack = () => {
  useEffect(
    () => () => {
      const { opener } = useNightRun.getState();
      if (opener) setTimeout(() => document.querySelector<HTMLElement>(opener)?.focus());
    },
    [],
  );
};

/** The page for the dark. It stands in place of all else, so that nothing is traced meanwhile. */
export const NightRun = () => {
  const { name } = useSetup();
  const scheme = useScheme();
  const card = useRunCard();
  const hasFailed = useReports((state) => state.failed);
  const theme = useNightTheme((state) => state.theme);
  const notice = useApp((state) => state.notice);
  const showsLog = useNightRun((state) => state.showsLog);
  useEscape();
  useDroppedFile(refuseFile);
  useFocusBack();
  return (
    <main className="night-run">
      {notice && <Notice key={notice.text} tone={notice.tone} text={notice.text} onClose={closeNotice} />}
      <header>
        <h1>
          {name} · {scheme.name}
        </h1>
        <button type="button" onClick={leaveNightRun}>
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
        <button type="button" onClick={showsLog ? stepBack : openNights}>
          {showsLog ? 'Tonight' : 'Nights'}
        </button>
        <fieldset className="run-themes" aria-label="Light of the screen">
          {nightThemes.map(([id, words]) => (
            <button key={id} type="button" aria-pressed={theme === id} onClick={() => chooseNightTheme(id)}>
              {words}
            </button>
          ))}
        </fieldset>
      </footer>
    </main>
  );
};
