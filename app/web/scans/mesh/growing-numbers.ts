/** A list of numbers in a typed array that doubles as it fills. */
export class GrowingNumbers<T extends Uint32Array | Float64Array | Float32Array> {
  private readonly make: new (
    length: number,
  ) => T;
  private array: T;
  private count = 0;

  constructor(make: new (length: number) => T) {
    this.make = make;
    this.array = new make(1024);
  }

  push(value: number): void {
    if (this.count === this.array.length) {
      const larger = new this.make(this.count * 2);
      larger.set(this.array);
      this.array = larger;
    }
    this.array[this.count++] = value;
  }

  get length(): number {
    return this.count;
  }

  /** What was pushed so far; not a copy. */
  values(): T {
    return this.array.subarray(0, this.count) as T;
  }
}
