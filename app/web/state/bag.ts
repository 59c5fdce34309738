import { create } from 'zustand';
import { type BagLamp, maxBagLamps } from '../../../core/bag/bag-file.ts';
import type { Lamp, MeasuredBeam, Setup } from '../../../core/setup/schema/setup.ts';
import { deleteKeptLamp, keptLamps, putKeptLamp } from '../storage/lamps-kept.ts';
import type { KeptLamp } from '../storage/records.ts';
import { type TestShot, withTestShot } from './edits/test-shot-edits.ts';
import { pageConnection } from './page-saving.ts';

/** What keeps the lamps: the browser's store, or a stand-in in tests. */
export interface BagKeeper {
  readonly all: () => Promise<KeptLamp[]>;
  readonly put: (lamp: KeptLamp) => Promise<void>;
  readonly remove: (id: string) => Promise<void>;
}

interface Bag {
  /** The latest first; null until they are read. */
  readonly lamps: readonly KeptLamp[] | null;
  /** Why the bag can't be used just now, a sentence; null = nothing is wrong. */
  readonly problem: string | null;
}

const problemText =
  'Your bag can’t be kept in this browser just now. Export it, or save the setup: its lamps are in the file.';

/** The user's own lamps, kept across setups. Changes show at once and are written after. */
export class LampBag {
  readonly state = create<Bag>(() => ({ lamps: null, problem: null }));
  private readonly keeper: BagKeeper;

  constructor(keeper: BagKeeper) {
    this.keeper = keeper;
  }

  private async attempt(work: () => Promise<unknown>): Promise<boolean> {
    try {
      await work();
      this.state.setState({ problem: null });
      return true;
    } catch {
      this.state.setState({ problem: problemText });
      return false;
    }
  }

  /** Reads the bag, once. */
  async load(): Promise<void> {
    if (this.state.getState().lamps !== null) return;
    await this.attempt(async () => this.state.setState({ lamps: await this.keeper.all() }));
  }

  /** Puts lamps in, each in place of the one of its id. False where they could not be kept: they are there for now. */
  async put(...added: readonly KeptLamp[]): Promise<boolean> {
    await this.load();
    const ids = new Set(added.map(({ id }) => id));
    const others = (this.state.getState().lamps ?? []).filter(({ id }) => !ids.has(id));
    this.state.setState({ lamps: [...added, ...others].slice(0, maxBagLamps) });
    return this.attempt(async () => {
      for (const each of added) await this.keeper.put(each);
    });
  }

  async remove(id: string): Promise<boolean> {
    this.state.setState(({ lamps }) => ({ lamps: lamps?.filter((each) => each.id !== id) ?? null }));
    return this.attempt(() => this.keeper.remove(id));
  }
}

/** The page's bag. */
export const pageBag = new LampBag({
  all: () => pageConnection.use(keptLamps),
  put: (lamp) => pageConnection.use((database) => putKeptLamp(database, lamp)),
  remove: (id) => pageConnection.use((database) => deleteKeptLamp(database, id)),
});

export const useBag = pageBag.state;

/** The measured beam that a lamp of a setup has. */
export const beamOfLamp = ({ measuredBeams }: Setup, lamp: Lamp): MeasuredBeam | null =>
  ('beam' in lamp &&
    lamp.beam.shape === 'measured' &&
    measuredBeams.find(({ id }) => id === (lamp.beam as { beamId: string }).beamId)) ||
  null;

const plainName = (name: string): string => name.trim().toLowerCase();

/** The lamp of the bag that a lamp of a setup is a copy of, by its kind and name. */
export const twinOf = (lamps: readonly KeptLamp[] | null, { kind, name }: Lamp): KeptLamp | null =>
  lamps?.find(({ lamp }) => lamp.kind === kind && plainName(lamp.name) === plainName(name)) ?? null;

/** Whether two lamps are the same but for their ids, measured beams and all. */
export const isSameLamp = (a: BagLamp, b: BagLamp): boolean => {
  const text = ({ lamp, beam }: BagLamp) =>
    JSON.stringify([
      {
        ...lamp,
        id: '',
        ...('beam' in lamp && lamp.beam.shape === 'measured' ? { beam: { ...lamp.beam, beamId: '' } } : {}),
      },
      beam && { ...beam, id: '' },
    ]);
  return text(a) === text(b);
};

const newId = (): string => crypto.randomUUID();

/** A lamp as the bag keeps it: in place of its twin, if it has one. */
export const keptOf = (bagLamp: BagLamp, twin: KeptLamp | null): KeptLamp => ({
  ...bagLamp,
  id: twin?.id ?? newId(),
  keptAt: Date.now(),
});

/** A kept lamp corrected by one more test shot. */
export const correctedKept = (kept: KeptLamp, shot: TestShot): KeptLamp => ({
  ...kept,
  lamp: withTestShot(kept.lamp, shot),
  keptAt: Date.now(),
});
