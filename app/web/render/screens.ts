import type { Size } from './layer-store.ts';

/** Plain canvases on the page that finished pictures are copied to, by name. They can stand, scroll and print anywhere. */
export class Screens {
  private readonly canvases = new Map<string, HTMLCanvasElement>();

  /** Puts a canvas up; the answer takes it down again. */
  add(name: string, canvas: HTMLCanvasElement): () => void {
    this.canvases.set(name, canvas);
    return () => {
      if (this.canvases.get(name) === canvas) this.canvases.delete(name);
    };
  }

  /** The canvas put up under a name; null = there is none. */
  get(name: string): HTMLCanvasElement | null {
    return this.canvases.get(name) ?? null;
  }

  /** Copies the lower left part of the card's canvas. Must follow the drawing without a pause. */
  copy(name: string, card: HTMLCanvasElement, { width, height }: Size): void {
    const canvas = this.canvases.get(name);
    if (!canvas) return;
    if (canvas.width !== width || canvas.height !== height) Object.assign(canvas, { width, height });
    canvas
      .getContext('2d', { alpha: false })
      ?.drawImage(card, 0, card.height - height, width, height, 0, 0, width, height);
  }

  /** Fills a screen with an image of another size, smoothed unless its pixels stand for numbers. */
  paint(name: string, image: CanvasImageSource, { width, height }: Size, isSmooth: boolean): void {
    const canvas = this.canvases.get(name);
    if (!canvas) return;
    if (canvas.width !== width || canvas.height !== height) Object.assign(canvas, { width, height });
    const context = canvas.getContext('2d', { alpha: false });
    if (!context) return;
    context.imageSmoothingEnabled = isSmooth;
    context.imageSmoothingQuality = 'high';
    context.drawImage(image, 0, 0, width, height);
  }

  /** Blackens a screen that has nothing to show yet. */
  blank(name: string): void {
    const canvas = this.canvases.get(name);
    canvas?.getContext('2d', { alpha: false })?.clearRect(0, 0, canvas.width, canvas.height);
  }
}
