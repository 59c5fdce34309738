import { create } from 'zustand';
import type { BagLamp } from '../../../core/bag/bag-file.ts';
import { maxBagLamps } from '../../../core/bag/bag-size.ts';
import { changeKeptLamps, keptLamps } from '../storage/lamps-kept.ts';
import { newKey } from '../storage/new-key.ts';
import type { KeptLamp } from '../storage/records.ts';
import { pageConnection } from './page-saving.ts';

type Lamps = readonly KeptLamp[];

/** A change of the bag: the lamps that are to be there of those that are; null = it can't be made, all stays. */
export type BagChange = (lamps: Lamps) => Lamps | null;

/** What keeps the lamps: the browser's store, or a stand-in in tests. */
export interface BagKeeper {
  readonly all: () => Promise<Lamps>;
  /** Changes what is there now, in one go, and gives back what is there then. */
  readonly change: (change: BagChange) => Promise<Lamps>;
}

interface Bag {
  /** The latest first; null until they are read. */
  readonly lamps: Lamps | null;
  /** Why the bag can't be used just now, a sentence; null = nothing is wrong. */
  readonly problem: string | null;
}

const problemText =
  'Your bag can’t be kept in this browser just now. Export it, or save the setup: its lamps are in the file.';
const fullText = `Your bag holds at most ${maxBagLamps} lamps. Take some out first; nothing was put in.`;

/** Puts lamps in, each in place of the one of its id; null where there is no room for them. */
const withLamps =
  (added: Lamps): BagChange =>
  (lamps) => {
    const ids = new Set(added.map(({ id }) => id));
    const all = [...added, ...lamps.filter(({ id }) => !ids.has(id))];
    return all.length > Math.max(maxBagLamps, lamps.length) ? null : all;
  };

/** The user's own lamps, kept across setups. Changes show at once and are written after. */
export class LampBag {
  readonly state = create<Bag>(() => ({ lamps: null, problem: null }));
  private readonly keeper: BagKeeper;

  constructor(keeper: BagKeeper) {
    this.keeper = keeper;
  }

  /** Reads the bag, once. */
  async load(): Promise<void> {
    if (this.state.getState().lamps === null) await this.read();
  }

  /** Reads it again, where it was read: another tab may have changed it. */
  async refresh(): Promise<void> {
    if (this.state.getState().lamps !== null) await this.read();
  }

  private async read(): Promise<void> {
    try {
      this.state.setState({ lamps: await this.keeper.all(), problem: null });
    } catch {
      this.state.setState({ problem: problemText });
    }
  }

  /** False where it could not be kept: then it shows for now, unless it can't be made at all. */
  private async change(change: BagChange): Promise<boolean> {
    await this.load();
    const shown = change(this.state.getState().lamps ?? []);
    if (shown) this.state.setState({ lamps: shown });
    let isMade = false;
    try {
      const lamps = await this.keeper.change((kept) => {
        const changed = change(kept);
        isMade = changed !== null;
        return changed;
      });
      this.state.setState({ lamps, problem: isMade ? null : fullText });
    } catch {
      isMade = false;
      this.state.setState({ problem: problemText });
    }
    return isMade;
  }

  /** Puts lamps in, each in place of the one of its id: all of them, or none where there is no room. */
  put(...added: Lamps): Promise<boolean> {
    return this.change(withLamps(added));
  }

  /** Changes one lamp as it is kept now. One that is no longer there stays away. */
  correct(id: string, correction: (kept: KeptLamp) => KeptLamp): Promise<boolean> {
    return this.change((lamps) => lamps.map((kept) => (kept.id === id ? correction(kept) : kept)));
  }

  remove(id: string): Promise<boolean> {
    return this.change((lamps) => lamps.filter((each) => each.id !== id));
  }
}

/** The page's bag. */
export const pageBag = new LampBag({
  all: () => pageConnection.use(keptLamps),
  change: (change) => pageConnection.use((database) => changeKeptLamps(database, change)),
});
if (typeof window !== 'undefined') window.addEventListener('focus', () => void pageBag.refresh());

export const useBag = pageBag.state;

/** A lamp as the bag keeps it: in place of another, if there is one. */
export const keptOf = (bagLamp: BagLamp, insteadOf: KeptLamp | null): KeptLamp => ({
  lamp: bagLamp.lamp,
  beam: bagLamp.beam,
  id: insteadOf?.id ?? newKey(),
  keptAt: Date.now(),
});
