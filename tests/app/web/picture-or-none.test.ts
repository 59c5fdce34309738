import { afterEach, describe, expect, it, vi } from 'vitest';

vi.mock('../../../app/web/render/capability.ts', () => ({ graphicsCard: () => ({ isThere: true, hasFloats: true }) }));

describe('pictureOrNone', () => {
  afterEach(() => void vi.useRealTimers());

  /** The page's modules anew, and how many listen to the night run. */
  const waiting = async () => {
    vi.useFakeTimers();
    vi.resetModules();
    const { useNightRun } = await import('../../../app/web/state/night-run.ts');
    const { pictureStands } = await import('../../../app/web/render/first-picture.ts');
    const { pictureOrNone } = await import('../../../app/web/picture-or-none.ts');
    const { subscribe } = useNightRun;
    const told = { isOver: false, listeners: 0 };
    vi.spyOn(useNightRun, 'subscribe').mockImplementation((listener) => {
      told.listeners++;
      const end = subscribe(listener);
      return () => {
        told.listeners--;
        end();
      };
    });
    void pictureOrNone().then(() => {
      told.isOver = true;
    });
    await vi.advanceTimersByTimeAsync(7000);
    return { told, openNightRun: () => useNightRun.setState({ isOpen: true }), pictureStands };
  };
  type Waiting = Awaited<ReturnType<typeof waiting>>;

  it.each<[string, (page: Waiting) => void]>([
    ['the first picture stands', ({ pictureStands }) => pictureStands(0)],
    ['the night run is opened, which shows none', ({ openNightRun }) => openNightRun()],
    ['eight seconds are over', () => void vi.advanceTimersByTime(1001)],
  ])('waits until %s, and listens to nothing after', async (_, happens) => {
    const page = await waiting();
    expect(page.told).toEqual({ isOver: false, listeners: 1 });
    happens(page);
    await vi.advanceTimersByTimeAsync(0);
    expect(page.told).toEqual({ isOver: true, listeners: 0 });
  });
});
