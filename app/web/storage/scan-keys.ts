import { newKey } from './new-key.ts';

/** What the data of a setup's scans is kept under: the same data has the same key, however often it is written. */
export class ScanKeys {
  private readonly keys: Map<string, string>;
  /** Keys of data that is known to be kept. */
  private kept: ReadonlySet<string>;

  constructor(kept: readonly (readonly [data: string, key: string])[] = []) {
    this.keys = new Map(kept);
    this.kept = new Set(this.keys.values());
  }

  keyOf(data: string): string {
    const key = this.keys.get(data) ?? newKey();
    this.keys.set(data, key);
    return key;
  }

  isKept(key: string): boolean {
    return this.kept.has(key);
  }

  /** Says which are kept now, and no others. */
  areKept(keys: Iterable<string>): void {
    this.kept = new Set(keys);
  }
}
