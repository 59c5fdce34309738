import { ScanError } from '../scan-error.ts';

/** A value of a glTF's JSON with its path, so that what is missing or out of place is named. */
export class JsonField {
  readonly value: unknown;
  readonly path: string;

  constructor(value: unknown, path = '') {
    this.value = value;
    this.path = path;
  }

  /** Fails with the field's name. */
  refuse(what: string): never {
    throw new ScanError(`The file is broken: ${this.path || 'it'} ${what}`);
  }

  get isThere(): boolean {
    return this.value !== undefined && this.value !== null;
  }

  /** A member of an object; one that is not there, when this is none. */
  get(key: string): JsonField {
    const isObject = typeof this.value === 'object' && this.value !== null && Object.hasOwn(this.value, key);
    const value = isObject ? (this.value as Record<string, unknown>)[key] : undefined;
    return new JsonField(value, this.path ? `${this.path}.${key}` : key);
  }

  /** The entries of an array; none, when it is not there. */
  items(): JsonField[] {
    if (!this.isThere) return [];
    if (!Array.isArray(this.value)) return this.refuse('must be a list');
    return this.value.map((entry, i) => new JsonField(entry, `${this.path}[${i}]`));
  }

  /** One entry of a list, by its number in another field. */
  entry(index: number): JsonField {
    const list = this.value;
    if (!Array.isArray(list) || index >= list.length) return this.refuse(`has no entry ${index}`);
    return new JsonField(list[index], `${this.path}[${index}]`);
  }

  /** A whole number from 0, at most `most`. */
  whole(most = 0xffffffff, missing?: number): number {
    if (!this.isThere && missing !== undefined) return missing;
    const value = this.value;
    if (typeof value !== 'number' || !Number.isInteger(value) || value < 0 || value > most)
      return this.refuse(`must be a whole number from 0 to ${most}`);
    return value;
  }

  /** So many numbers. */
  numbers(count: number, missing: readonly number[]): readonly number[] {
    if (!this.isThere) return missing;
    const list = this.value;
    if (!Array.isArray(list) || list.length !== count || !list.every((v) => typeof v === 'number'))
      return this.refuse(`must be ${count} numbers`);
    return list as number[];
  }

  text(missing = ''): string {
    return typeof this.value === 'string' ? this.value : missing;
  }

  /** Names of the members of an object. */
  keys(): string[] {
    return typeof this.value === 'object' && this.value !== null ? Object.keys(this.value) : [];
  }
}
