import { afterEach, describe, expect, it, vi } from 'vitest';
import { explain } from '../../../app/cli/explain.ts';
import { limits } from '../../../core/cautions/limits.ts';

const said = async (...words: string[]): Promise<string> => {
  let text = '';
  vi.spyOn(process.stdout, 'write').mockImplementation((part) => {
    text += String(part);
    return true;
  });
  await explain.run(words);
  return text;
};

describe('lampfall explain', () => {
  afterEach(() => vi.restoreAllMocks());
  it('says of a code what it means, its limits and their source', async () => {
    const text = await said('near-axis');
    expect(text).toContain(`under ${limits.nearAxisDegrees.danger}°`);
    expect(text).toContain('Source: Common practice, no published source.');
  });
  it('says both where a reading and a caution share a name', async () => {
    const text = await said('burnt');
    expect(text).toContain('Burnt (caution)');
    expect(text).toContain('Burnt (reading)');
  });
  it('lists what it knows, and tells where a name is none', async () => {
    expect(await said()).toMatch(/\n {2}star-trails +Star trails\n/);
    await expect(async () => explain.run(['toString'])).rejects.toThrow('nothing is called "toString"');
    await expect(async () => explain.run(['a', 'b'])).rejects.toThrow('one name at a time');
  });
});
