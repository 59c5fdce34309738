import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

/** A document whose canvases give a context with some extensions, or none at all. */
const documentWith = (extensions: readonly string[] | null) => {
  const lost = vi.fn();
  const getContext = vi.fn((_kind: string) =>
    extensions === null
      ? null
      : {
          getExtension: (name: string) => {
            if (name === 'WEBGL_lose_context') return { loseContext: lost };
            return extensions.includes(name) ? {} : null;
          },
        },
  );
  vi.stubGlobal('document', { createElement: () => ({ getContext }) });
  return { lost, getContext };
};

describe('graphicsCard', () => {
  beforeEach(() => vi.resetModules());
  afterEach(() => void vi.unstubAllGlobals());
  const ask = async () => (await import('../../../app/web/render/capability.ts')).graphicsCard;

  it.each([
    ['no WebGL2', null, { isThere: false, hasFloats: false }],
    ['no float targets: no picture, but the view from any side', [], { isThere: true, hasFloats: false }],
    ['all that pictures need', ['EXT_color_buffer_float'], { isThere: true, hasFloats: true }],
  ] as const)('%s', async (_, extensions, expected) => {
    documentWith(extensions);
    expect((await ask())()).toEqual(expected);
  });

  it('asks once for WebGL2, and gives the context back', async () => {
    const { lost, getContext } = documentWith(['EXT_color_buffer_float']);
    const graphicsCard = await ask();
    graphicsCard();
    graphicsCard();
    expect(getContext.mock.calls).toEqual([['webgl2']]);
    expect(lost).toHaveBeenCalledTimes(1);
  });
});
