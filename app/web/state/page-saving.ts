import { Connection } from '../storage/connection.ts';
import { openTabChannel } from '../storage/tab-channel.ts';
import { useApp } from './app-store.ts';
import { samples } from './samples.ts';
import { Saving } from './saving.ts';
import { createSavingState } from './saving-state.ts';
import { directWriter, workerWriter } from './setup-writer.ts';

/** The page's own store: other things than setups may be kept there too, such as lamps. */
export const pageConnection = new Connection();

/** How keeping the page's setup goes. */
export const useSaving = createSavingState();

/** Keeps the page's setup, once it is started. */
export const pageSaving = new Saving({
  app: useApp,
  state: useSaving,
  connection: pageConnection,
  startWriter: () => workerWriter(directWriter(pageConnection)),
  openChannel: openTabChannel,
  sampleId: samples[0]?.id ?? '',
});
