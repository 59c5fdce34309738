import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { parseSetup } from '../../core/setup/parse-setup.ts';

const query = '?parsed';

/** Gives a setup file of `assets` asked for with `?parsed` as it is once it is read: the page that opens on it needs no schema. */
export const samplePlugin = (): Plugin => ({
  name: 'sample',
  enforce: 'pre',
  load(id) {
    if (!id.endsWith(`.json${query}`)) return null;
    const file = id.slice(0, -query.length);
    this.addWatchFile(file);
    const setup = JSON.stringify(parseSetup(readFileSync(file, 'utf8')));
    return { code: `export default JSON.parse(${JSON.stringify(setup)});`, moduleType: 'js' };
  },
});
