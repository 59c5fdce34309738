import { DataTexture, FloatType, NearestFilter, RGBAFormat, type Texture } from 'three';
import { skyPicture } from '../../../core/trace/sky-picture.ts';
import { withFourth } from '../../../core/trace/with-fourth.ts';
import type { Size } from './layer-store.ts';
import { plainSkyDrawer, type SkyDrawer, type SkyView } from './sky-drawer.ts';

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

/** The values go once they are on the card: they may take as much memory as a layer. */
const textureOf = (values: Float32Array<ArrayBuffer>, { width, height }: Size): DataTexture => {
  const texture = new DataTexture(values, width, height, RGBAFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  texture.onUpdate = () => {
    texture.image.data = null as never;
  };
  return texture;
};

/** Failures in a row after which skies are drawn without the worker. */
const mostFailures = 1;

/** Width of the small sky that is shown at once where there is none yet, as while a camera is moved. */
const quickWidth = 96;

const quickSize = ({ width, height }: Size): Size =>
  width <= quickWidth ? { width, height } : { width: quickWidth, height: Math.ceil((height * quickWidth) / width) };

/** Keeps the skies that are wanted drawn, one after the other; each stays until the next for its slot is there. */
export class SkyPictures {
  /** What is wanted, by slot, and what is there for it: the very one, or one from before. */
  private slots = new Map<string, { readonly order: SkyOrder; shown: DrawnSky }>();
  private atWork = false;
  private count = 0;
  private failures = 0;
  /** Counts up when all that was drawn is out of date. */
  private generation = 0;
  private readonly onDrawn: () => void;
  private drawer: SkyDrawer = plainSkyDrawer;

  constructor(onDrawn: () => void) {
    this.onDrawn = onDrawn;
  }

  /** Has skies drawn by another from now on. */
  setDrawer(drawer: SkyDrawer): void {
    this.drawer = drawer;
    drawer.onMore(() => {
      if (this.drawer === drawer) this.drawAnew();
    });
    this.drawAnew();
  }

  private drawAnew(): void {
    this.generation++;
    this.next();
    this.onDrawn();
  }

  /** Told when a picture is on a screen. */
  pictureShown(): void {
    if (this.slots.size > 0) this.drawer.pictureShown();
  }

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
    this.next();
  }

  /** Small, without stars, and at once. */
  private quick({ view, sky, size }: SkyOrder, place: string): DrawnSky {
    const small = quickSize(size);
    const values = withFourth(skyPicture({ view, ...small }, sky, null));
    return { key: 'quick', place, texture: textureOf(values, small), number: ++this.count };
  }

  private dropUnused(textures: readonly DrawnSky[]): void {
    const used = new Set([...this.slots.values()].map(({ shown }) => shown));
    for (const each of textures) if (!used.has(each)) each.texture.dispose();
  }

  private keyNow(order: SkyOrder): string {
    return `${this.generation}|${keyOf(order)}`;
  }

  private get waiting(): SkyOrder | undefined {
    return [...this.slots.values()].find(({ order, shown }) => shown.key !== this.keyNow(order))?.order;
  }

  /** Whether everything that is wanted is there, stars and all. */
  get isSettled(): boolean {
    return this.slots.size === 0 || (!this.waiting && this.drawer.isComplete);
  }

  private next(): void {
    const order = this.waiting;
    if (this.atWork || !order) return;
    this.atWork = true;
    const key = this.keyNow(order);
    this.drawer.draw(order).then(
      (values) => {
        this.atWork = false;
        this.failures = 0;
        this.keep(order, key, values);
        this.next();
        this.onDrawn();
      },
      () => {
        this.atWork = false;
        this.failed(key);
      },
    );
  }

  /** What fails once is asked for once more, then drawn here without stars; where that fails too the small sky stays. */
  private failed(key: string): void {
    this.failures++;
    if (this.failures > mostFailures && this.drawer !== plainSkyDrawer) {
      this.setDrawer(plainSkyDrawer);
      return;
    }
    if (this.failures > mostFailures) this.settleWithout(key);
    this.next();
  }

  private settleWithout(key: string): void {
    for (const slot of this.slots.values()) if (this.keyNow(slot.order) === key) slot.shown = { ...slot.shown, key };
    this.onDrawn();
  }

  private keep(order: SkyOrder, key: string, values: Float32Array<ArrayBuffer>): void {
    const place = placeOf(order);
    const drawn = { key, place, texture: textureOf(values, order.size), number: ++this.count };
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

  of(slot: string): Texture | undefined {
    return this.slots.get(slot)?.shown.texture;
  }

  /** A number that changes when the sky of a slot does; 0 while there is none. */
  numberOf(slot: string): number {
    return this.slots.get(slot)?.shown.number ?? 0;
  }

  /** Lets go of everything; what is wanted next is drawn anew. */
  clear(): void {
    for (const { shown } of this.slots.values()) shown.texture.dispose();
    this.slots.clear();
  }
}
