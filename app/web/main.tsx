import './own-scripts.ts';
import '@fontsource-variable/atkinson-hyperlegible-next';
import { StrictMode } from 'react';
import { createRoot, type Root } from 'react-dom/client';
import { App } from './App.tsx';
import { fetchLateRooms } from './late-rooms.tsx';
import { startThumbnails } from './library/keep-thumbnails.ts';
import { saveFile } from './library/save-file.ts';
import { pictureOrNone } from './picture-or-none.ts';
import { drawWith, startDarkroomOver } from './render/the-darkroom.ts';
import { watchAddress } from './share/watch-address.ts';
import { useApp } from './state/app-store.ts';
import { startMarks } from './state/marks.ts';
import { watchNightPages } from './state/night-pages.ts';
import { startNightTheme } from './state/night-theme.ts';
import { beforeTakingUp, holdFiles, keepFiles } from './state/offline.ts';
import { pageSaving } from './state/page-saving.ts';
import { startReports } from './state/reports.ts';
import { skyWorkerDrawer } from './state/sky-drawer.ts';
import { slowPictureWorker } from './state/slow-pictures.ts';
import { startSaving } from './state/start-saving.ts';
import { markOpen } from './storage/open-mark.ts';
import { FaultScreen } from './ui/FaultScreen.tsx';
import './ui/look.css';
import './ui/page.css';
import './ui/menu.css';
import './ui/notices.css';
import './ui/fields.css';
import './ui/walkaround.css';
import './ui/plan.css';
import './ui/plan-tools.css';
import './ui/slips.css';
import './ui/path.css';
import './ui/phone.css';
import './ui/lamp-fields.css';
import './ui/frame-more.css';
import './ui/camera-fields.css';
import './ui/placing.css';
import './ui/picture-words.css';
import './ui/compare.css';
import './ui/drop.css';
import './ui/tiles.css';
import './ui/tile-words.css';
import './ui/pair.css';
import './ui/sweep.css';
import './ui/sweep-cells.css';
import './ui/marks.css';
import './ui/mini-plan.css';
import './ui/lesson.css';
import './ui/subjects.css';
import './ui/subject-fields.css';
import './ui/parts.css';
import './ui/ground-fields.css';
import './ui/frames.css';
import './ui/time-bars.css';
import './ui/time-line.css';
import './ui/time-rows.css';
import './ui/time-line-sizes.css';
import './ui/time-order.css';
import './ui/unfold.css';
import './ui/why.css';
import './ui/hints.css';
import './ui/phone-sideways.css';
import './ui/icons.css';
import './ui/blend.css';
import './ui/print.css';
import './ui/scan-dialog.css';
import './ui/approach.css';
import './ui/hour.css';
import './ui/sky-drawings.css';
import './ui/place.css';
import './ui/night-themes.css';
import './ui/own-setups.css';

declare global {
  interface Window {
    /** For tests: the page as it was when it was opened, without loading it again. */
    lampfallStartOver?: () => Promise<void>;
  }
}

const put = (): Root => {
  const root = createRoot(document.getElementById('root') as HTMLElement);
  root.render(
    <StrictMode>
      <FaultScreen onSave={saveFile} onFault={() => markOpen('')}>
        <App />
      </FaultScreen>
    </StrictMode>,
  );
  return root;
};

/** Waits for the picture, so that keeping files never slows it; where it takes very long, or there is none, no longer than this. */
const mostSecondsToPicture = 20;

const keepFilesAfterPicture = (second = 0): void => {
  if (window.lampfallProbe?.().isConverged || second >= mostSecondsToPicture) void keepFiles();
  else setTimeout(keepFilesAfterPicture, 1000, second + 1);
};

holdFiles();
startNightTheme();
const picture = pictureOrNone();
drawWith({ sky: skyWorkerDrawer(picture), slow: slowPictureWorker() });
await startSaving();
beforeTakingUp(() => pageSaving.autosave.flush());
let root = put();
watchAddress();
watchNightPages();
window.lampfallStartOver = async () => {
  const { startStoresOver } = await import('./state/start-over.ts');
  root.unmount();
  await pageSaving.startOver(useApp.getInitialState().history.present);
  startStoresOver();
  startDarkroomOver();
  root = put();
};
await picture;
void fetchLateRooms();
startReports();
startMarks();
startThumbnails();
if (!import.meta.hot) keepFilesAfterPicture();
