import type { DataTexture, Texture } from 'three';
import type { SkyView } from './sky-drawer.ts';
import { quickSkyTexture, skyTexture } from './sky-texture.ts';

/** A sky that is wanted as a picture. */
export interface SkyOrder extends SkyView {
  /** What it is for: until it is there, the one before for the same purpose is shown. */
  readonly slot: string;
}

const keyOf = ({ view, sky, size }: SkyOrder): string => JSON.stringify([view, sky, size]);
const placeOf = ({ view, size }: SkyOrder): string => JSON.stringify([view, size]);

interface DrawnSky {
  readonly key: string;
  /** View and size: seen elsewhere it would lie in the wrong place. */
  readonly place: string;
  readonly texture: DataTexture;
  /** Grows with each sky drawn. */
  readonly number: number;
}

/** What skies are wanted, by slot, and what is there for each: the very one, or one from before. */
export class SkySlots {
  private slots = new Map<string, { readonly order: SkyOrder; shown: DrawnSky }>();
  private count = 0;
  /** Counts up when all that was drawn is out of date. */
  private generation = 0;

  want(orders: readonly SkyOrder[]): void {
    const before = this.slots;
    const there = [...before.values()].map(({ shown }) => shown);
    this.slots = new Map(
      orders.map((order) => {
        const [key, place] = [this.keyNow(order), placeOf(order)];
        const last = before.get(order.slot)?.shown;
        const shown =
          there.find((each) => each.key === key) ??
          (last?.place === place ? last : (there.find((each) => each.place === place) ?? this.quick(order, place)));
        if (!there.includes(shown)) there.push(shown);
        return [order.slot, { order, shown }];
      }),
    );
    this.dropUnused(there);
  }

  private quick(order: SkyOrder, place: string): DrawnSky {
    return { key: 'quick', place, texture: quickSkyTexture(order), number: ++this.count };
  }

  private dropUnused(textures: readonly DrawnSky[]): void {
    const used = new Set([...this.slots.values()].map(({ shown }) => shown));
    for (const each of textures) if (!used.has(each)) each.texture.dispose();
  }

  /** All that is there is out of date: it is shown until it was drawn anew. */
  outdate(): void {
    this.generation++;
  }

  /** What the very sky of an order is called, until it is out of date. */
  keyNow(order: SkyOrder): string {
    return `${this.generation}|${keyOf(order)}`;
  }

  /** The first order whose very sky is not there. */
  get waiting(): SkyOrder | undefined {
    return [...this.slots.values()].find(({ order, shown }) => shown.key !== this.keyNow(order))?.order;
  }

  /** Puts a sky that was drawn where it is wanted, and where it is nearer to that than what is there. */
  keep(order: SkyOrder, key: string, values: Float32Array<ArrayBuffer>): void {
    const place = placeOf(order);
    const drawn = { key, place, texture: skyTexture(values, order.size), number: ++this.count };
    const before: DrawnSky[] = [drawn];
    for (const slot of this.slots.values()) {
      const isIt = this.keyNow(slot.order) === key;
      const isNearer = slot.order.slot === order.slot && placeOf(slot.order) === place;
      if (!isIt && !isNearer) continue;
      before.push(slot.shown);
      slot.shown = drawn;
    }
    this.dropUnused(before);
  }

  /** What is there in place of a sky that can't be drawn counts for it. */
  settleWithout(key: string): void {
    for (const slot of this.slots.values()) if (this.keyNow(slot.order) === key) slot.shown = { ...slot.shown, key };
  }

  get isEmpty(): boolean {
    return this.slots.size === 0;
  }

  of(slot: string): Texture | undefined {
    return this.slots.get(slot)?.shown.texture;
  }

  /** A number that changes when the sky of a slot does; 0 while there is none. */
  numberOf(slot: string): number {
    return this.slots.get(slot)?.shown.number ?? 0;
  }

  /** Lets go of everything. */
  clear(): void {
    for (const { shown } of this.slots.values()) shown.texture.dispose();
    this.slots.clear();
  }
}
