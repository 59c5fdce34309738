import type { Page } from 'playwright-core';

/** What graphics contexts of a page hold, by kind. */
export interface Held {
  readonly contexts: number;
  readonly Texture: number;
  readonly Framebuffer: number;
  readonly Renderbuffer: number;
  readonly Buffer: number;
  readonly VertexArray: number;
  readonly Program: number;
  readonly Shader: number;
  /** Bytes of the textures, by their size and format as they were last made. */
  readonly textureBytes: number;
}

declare global {
  interface Window {
    heldOnCard?: () => Held;
  }
}

/** Counts what the contexts of a page make and let go of; to be called before the page is loaded. A context that is lost holds nothing. */
export const countHeld = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const kinds = ['Texture', 'Framebuffer', 'Renderbuffer', 'Buffer', 'VertexArray', 'Program', 'Shader'] as const;
    type Kind = (typeof kinds)[number];
    const proto = WebGL2RenderingContext.prototype as unknown as Record<string, (...a: unknown[]) => unknown>;
    const contexts = new Map<WebGL2RenderingContext, Record<Kind, Set<unknown>>>();
    const bytes = new WeakMap<object, number>();
    const bound = new WeakMap<WebGL2RenderingContext, object | null>();
    const heldBy = (gl: WebGL2RenderingContext) => {
      const known = contexts.get(gl) ?? (Object.fromEntries(kinds.map((k) => [k, new Set()])) as never);
      contexts.set(gl, known);
      return known;
    };
    const wrap = (name: string, after: (gl: WebGL2RenderingContext, args: unknown[], result: unknown) => void) => {
      const original = proto[name] as (...a: unknown[]) => unknown;
      proto[name] = function (this: WebGL2RenderingContext, ...args: unknown[]) {
        const result = original.apply(this, args);
        after(this, args, result);
        return result;
      };
    };
    for (const kind of kinds) {
      wrap(`create${kind}`, (gl, _, made) => heldBy(gl)[kind].add(made));
      wrap(`delete${kind}`, (gl, [gone]) => heldBy(gl)[kind].delete(gone));
    }
    wrap('bindTexture', (gl, [, texture]) => bound.set(gl, texture as object | null));
    const perTexel = (format: number): number =>
      ({ 34836: 16, 34837: 16, 33326: 4, 33328: 8, 34842: 8, 32856: 4, 6408: 4, 33325: 2, 33321: 1 })[format] ?? 4;
    const sized = (gl: WebGL2RenderingContext, format: unknown, width: unknown, height: unknown) => {
      const texture = bound.get(gl);
      if (texture) bytes.set(texture, perTexel(format as number) * (width as number) * (height as number));
    };
    wrap('texStorage2D', (gl, [, , format, width, height]) => sized(gl, format, width, height));
    wrap('texImage2D', (gl, args) => args.length >= 9 && sized(gl, args[2], args[3], args[4]));
    window.heldOnCard = () => {
      const live = [...contexts].filter(([gl]) => !gl.isContextLost()).map(([, held]) => held);
      const count = (kind: Kind) => live.reduce((sum, held) => sum + held[kind].size, 0);
      const textures = live.flatMap(({ Texture }) => [...Texture]);
      return {
        contexts: live.length,
        ...(Object.fromEntries(kinds.map((kind) => [kind, count(kind)])) as Record<Kind, number>),
        textureBytes: textures.reduce<number>((sum, texture) => sum + (bytes.get(texture as object) ?? 0), 0),
      };
    };
  });

export const heldOnCard = (page: Page): Promise<Held> =>
  page.evaluate(() => {
    const held = window.heldOnCard?.();
    if (!held) throw new Error('nothing is counted');
    return held;
  });
