import { beforeEach, describe, expect, it } from 'vitest';
import { openFile } from '../../../../app/web/library/open-file.ts';
import { useApp } from '../../../../app/web/state/app-store.ts';
import { goodLines, goodWith } from '../../../core/photometry/lm63/lm63-text.ts';

const told = async (name: string, text: string): Promise<string | undefined> => {
  await openFile(new File([text], name));
  return useApp.getState().notice?.text;
};
const lampFile = (name: string) =>
  `${name} was not opened. It is a lamp’s photometric file: read it in a lamp’s slip, or import it into your bag. Your present setup is unchanged.`;

describe('openFile', () => {
  beforeEach(() => useApp.getState().tell(null));

  // first lines as LM-63 has them: of 1991, 1995, 2002 and 2019; files of 1986 name no edition
  it.each(['IESNA91', 'IESNA:LM-63-1995', 'IESNA:LM-63-2002', 'IES:LM-63-2019', '\uFEFFiesna:lm-63-2002'])(
    'says where a lamp’s file belongs that begins with %s, whatever its name',
    async (first) => expect(await told('torch.txt', goodWith({ 1: first }))).toBe(lampFile('torch.txt')),
  );

  it.each([
    ['without an edition', goodLines.slice(5).join('\n')],
    ['that begins with a keyword', goodLines.slice(1).join('\n')],
  ])('goes by the ending for one %s', async (_, text) => {
    expect(await told('torch.IES', text)).toBe(lampFile('torch.IES'));
  });

  it('calls other words no setup file, and leaves what is open', async () => {
    const before = useApp.getState().history.present;
    expect(await told('shopping.txt', 'IES and other letters\n')).toMatch(/^shopping\.txt .* is not a setup file/);
    expect(useApp.getState().history.present).toBe(before);
  });
});
