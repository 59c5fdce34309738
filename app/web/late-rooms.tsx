import { ApproachRows } from './approach/Approaches.tsx';
import { BagDialog } from './bag/BagSlot.tsx';
import { loadCardFont, loadPdf } from './fieldcard/late-files.ts';
import { About, OwnSetups } from './library/SetupMenu.tsx';
import { pictureOrNone } from './picture-or-none.ts';
import { fetchPlaceData, HourPanel, PlaceFields } from './place/late-parts.ts';
import { ScanDialog } from './scandialog/ScanDialogSlot.tsx';
import { ShareDialog } from './share/ShareSlot.tsx';
import { loadOpenLink } from './share/watch-address.ts';
import { fetchKept, loadReader } from './state/samples.ts';
import { TestShotDialog } from './testshot/TestShotSlot.tsx';
import { fetchAbout } from './ui/about-texts.ts';
import { late } from './ui/late.tsx';

const meanwhile = <p className="quiet">Coming…</p>;

/** Rooms that the first picture does without: each is a file of its own. */
export const BelowPlan = late({ name: 'What stands below the plan' }, async () => {
  await pictureOrNone();
  return (await import('./BelowPlan.tsx')).BelowPlan;
});
export const Walkaround = late(
  { name: 'The walkaround', meanwhile },
  async () => (await import('./walkaround/Walkaround.tsx')).Walkaround,
);
export const CompareRoom = late(
  { name: 'The comparison', meanwhile },
  async () => (await import('./compare/CompareRoom.tsx')).CompareRoom,
);
export const SweepRoom = late(
  { name: 'The sweep', meanwhile },
  async () => (await import('./sweep/SweepRoom.tsx')).SweepRoom,
);
export const FieldCardRoom = late(
  { name: 'The card', meanwhile },
  async () => (await import('./fieldcard/FieldCardRoom.tsx')).FieldCardRoom,
);
export const NightRun = late(
  { name: 'This page', meanwhile },
  async () => (await import('./nightrun/NightRun.tsx')).NightRun,
);

const inOrder: readonly (() => Promise<unknown>)[] = [
  BelowPlan.fetch,
  loadReader,
  CompareRoom.fetch,
  Walkaround.fetch,
  OwnSetups.fetch,
  ApproachRows.fetch,
  HourPanel.fetch,
  PlaceFields.fetch,
  SweepRoom.fetch,
  FieldCardRoom.fetch,
  NightRun.fetch,
  ShareDialog.fetch,
  loadOpenLink,
  ScanDialog.fetch,
  TestShotDialog.fetch,
  BagDialog.fetch,
  About.fetch,
  fetchAbout,
  fetchKept,
  fetchPlaceData,
  loadCardFont,
  loadPdf,
];

const untilIdle = (): Promise<void> =>
  new Promise((resolve) => {
    // Safari has none
    if ('requestIdleCallback' in window) requestIdleCallback(() => resolve(), { timeout: 1000 });
    else setTimeout(resolve, 100);
  });

/**
 * Has all files come one after the other whenever the page is idle, so that a press on a room finds it there and what is
 * wanted in the field is there without a network. What does not come is asked for again when it is wanted.
 */
export const fetchLateRooms = async (): Promise<void> => {
  for (const fetch of inOrder) {
    await untilIdle();
    await fetch().catch(() => undefined);
  }
};
