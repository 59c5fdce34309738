import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { Autosave } from '../../../../app/web/storage/autosave.ts';

interface Write {
  readonly at: number;
  readonly document: object;
  readonly state: number;
}

/** An autosave whose writes take a while, and may be made to fail. */
const make = (takesMilliseconds = 30) => {
  const writes: Write[] = [];
  const rounds: unknown[] = [];
  const status = { under: 0, most: 0, fails: false };
  const autosave = new Autosave<object, number>({
    write: async (document, state) => {
      status.under++;
      status.most = Math.max(status.most, status.under);
      const { fails } = status;
      await new Promise((resolve) => setTimeout(resolve, takesMilliseconds));
      status.under--;
      if (fails) throw new Error('full');
      writes.push({ at: Date.now(), document, state });
    },
    onRound: (failure) => rounds.push(failure),
  });
  return { autosave, writes, rounds, status };
};

describe('Autosave', () => {
  beforeEach(() => {
    vi.useFakeTimers();
    vi.setSystemTime(1_000_000);
  });
  afterEach(() => void vi.useRealTimers());
  const document = {};
  const start = 1_000_000;

  it('writes the first change after rest at once, without waiting for a timer', async () => {
    const { autosave, status } = make();
    autosave.note(document, 1);
    expect(status.under).toBe(1);
    await vi.advanceTimersByTimeAsync(1000);
    autosave.note(document, 2);
    expect(status.under).toBe(1);
  });

  it('does not wait for a timer that is late, as on a page that is busy', async () => {
    const { autosave, status, writes } = make();
    autosave.note(document, 1);
    await vi.advanceTimersByTimeAsync(50);
    autosave.note(document, 2);
    vi.setSystemTime(start + 600);
    autosave.note(document, 3);
    expect(status.under).toBe(1);
    await vi.advanceTimersByTimeAsync(50);
    expect(writes.at(-1)?.state).toBe(3);
  });

  it.each([1, 30, 300, 700])(
    'while changes go on every 16 ms and a write takes %i ms, what was done a second before is always kept, unless writes take longer',
    async (takes) => {
      const { autosave, writes, status } = make(takes);
      for (let i = 0; i <= 300; i++) {
        autosave.note(document, i);
        await vi.advanceTimersByTimeAsync(16);
        const secondAgo = i - Math.ceil(Math.max(1000, 2 * takes) / 16);
        if (secondAgo >= 0) expect(writes.at(-1)?.state ?? -1).toBeGreaterThanOrEqual(secondAgo);
      }
      expect(status.most).toBe(1);
      // not more often than every 0.4 s
      expect(writes.length).toBeLessThanOrEqual(Math.ceil((301 * 16) / 400) + 1);
      await vi.advanceTimersByTimeAsync(2000);
      expect(writes.at(-1)?.state).toBe(300);
      expect(autosave.isBehind(document)).toBe(false);
    },
  );

  it('writes nothing that is kept already, nor what went back to it', async () => {
    const { autosave, writes } = make();
    autosave.isKeptAs(document, 1);
    autosave.note(document, 1);
    await vi.advanceTimersByTimeAsync(3000);
    expect(writes).toEqual([]);
    autosave.note(document, 2);
    await vi.advanceTimersByTimeAsync(100);
    autosave.note(document, 3);
    autosave.note(document, 2);
    await vi.advanceTimersByTimeAsync(3000);
    expect(writes.map(({ state }) => state)).toEqual([2]);
    expect(autosave.isBehind(document)).toBe(false);
  });

  it('what goes back to what was kept while something else is being written is written again', async () => {
    const { autosave, writes } = make(100);
    autosave.isKeptAs(document, 1);
    autosave.note(document, 2);
    await vi.advanceTimersByTimeAsync(50);
    autosave.note(document, 1);
    await vi.advanceTimersByTimeAsync(3000);
    expect(writes.map(({ state }) => state)).toEqual([2, 1]);
  });

  it('a document that was left is still brought up to date', async () => {
    const { autosave, writes } = make();
    const other = {};
    autosave.note(document, 1);
    autosave.note(other, 7);
    autosave.note(document, 2);
    await vi.advanceTimersByTimeAsync(1000);
    expect(writes.map((write) => [write.document === other, write.state])).toEqual([
      [false, 1],
      [false, 2],
      [true, 7],
    ]);
  });

  it('a failure is told once, waits for the next change, and is made good then', async () => {
    const { autosave, writes, rounds, status } = make();
    status.fails = true;
    autosave.note(document, 1);
    await vi.advanceTimersByTimeAsync(10_000);
    expect(rounds).toHaveLength(1);
    expect(rounds[0]).toBeInstanceOf(Error);
    expect(autosave.isBehind(document)).toBe(true);
    expect(autosave.isLate).toBe(true);
    status.fails = false;
    autosave.note(document, 2);
    await vi.advanceTimersByTimeAsync(50);
    expect(writes.map(({ state }) => state)).toEqual([2]);
    expect(rounds.at(-1)).toBeNull();
    expect(autosave.isLate).toBe(false);
  });

  it('while writes fail and changes go on, it tries every two seconds', async () => {
    const { autosave, rounds, status } = make();
    status.fails = true;
    for (let i = 0; i < 600; i++) {
      autosave.note(document, i);
      await vi.advanceTimersByTimeAsync(16);
    }
    expect(rounds.length).toBeGreaterThanOrEqual(4);
    expect(rounds.length).toBeLessThanOrEqual(6);
  });

  it('flush writes at once, also what came during the write, and ends where writes fail', async () => {
    const { autosave, writes, status } = make();
    autosave.note(document, 1);
    const flushed = autosave.flush();
    autosave.note(document, 2);
    await vi.advanceTimersByTimeAsync(100);
    await flushed;
    expect(writes.at(-1)).toMatchObject({ state: 2 });
    expect(writes.at(-1)?.at).toBeLessThanOrEqual(start + 100);
    status.fails = true;
    autosave.note(document, 3);
    const failed = autosave.flush();
    await vi.advanceTimersByTimeAsync(100);
    await failed;
    expect(autosave.isBehind(document)).toBe(true);
  });
});
