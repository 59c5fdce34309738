import { newKey } from './new-key.ts';

/** What the data of a setup's scans is kept under: the same data has the same key, however often it is written. */
export class ScanKeys {
  private readonly keys: Map<string, string>;

  constructor(known: readonly (readonly [data: string, key: string])[] = []) {
    this.keys = new Map(known);
  }

  keyOf(data: string): string {
    const key = this.keys.get(data) ?? newKey();
    this.keys.set(data, key);
    return key;
  }
}
