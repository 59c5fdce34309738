import type { DBSchema, IDBPDatabase } from 'idb';
import type { Lamp, MeasuredBeam } from '../../../core/setup/schema/setup.ts';

/** What is told of a kept setup without reading it. */
export interface SetupSummary {
  readonly key: string;
  readonly name: string;
  /** The sample or lesson that it began as; null = none. */
  readonly sampleId: string | null;
  /** Bytes of its file. */
  readonly bytes: number;
  /** When it was last written, and when it was last taken up, in milliseconds since 1970. */
  readonly changedAt: number;
  readonly openedAt: number;
  /** Different after each write: two tabs tell by it that the other wrote. */
  readonly revision: string;
  /** When it was deleted; it is cleared away some time after that. null = it is not. */
  readonly deletedAt: number | null;
  /** A small picture as a data address; null = there is none yet. */
  readonly thumbnail: string | null;
}

/** A kept setup: the JSON of its document, without the data of its scans. */
export interface SetupRecord {
  readonly text: string;
  /** For each scan of the document the second half of the key that its data is kept under. */
  readonly scanKeys: readonly string[];
}

/** A lamp in the user's bag, with the beam that it was measured to have. */
export interface KeptLamp {
  readonly id: string;
  readonly lamp: Lamp;
  readonly beam: MeasuredBeam | null;
  readonly keptAt: number;
}

/** What the browser keeps. A setup has the same key in `setups`, in `summaries`, and as the first half of its scans' keys. */
export interface KeptStores extends DBSchema {
  setups: { key: string; value: SetupRecord };
  summaries: { key: string; value: SetupSummary };
  scans: { key: [setup: string, scan: string]; value: string };
  lamps: { key: string; value: KeptLamp };
}

export type Database = IDBPDatabase<KeptStores>;
