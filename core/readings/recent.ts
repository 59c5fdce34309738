/** Keeps the last few things that were made, by key: what is asked for again is not made again. */
export class Recent<T> {
  private readonly kept = new Map<string, T>();
  private readonly most: number;

  constructor(most: number) {
    this.most = most;
  }

  get(key: string, make: () => T): T {
    const found = this.kept.has(key) ? (this.kept.get(key) as T) : make();
    // put last again, so that what was asked for longest ago stands first
    this.kept.delete(key);
    this.kept.set(key, found);
    if (this.kept.size > this.most) this.kept.delete(this.kept.keys().next().value as string);
    return found;
  }
}
