import type { Plugin } from 'vite';
import { packedStars } from './packed-stars.ts';

const name = 'virtual:stars';

/** Gives the page the address of the packed stars as `virtual:stars`: a file of its own when built, data in place else. */
export const starsPlugin = (): Plugin => {
  let isBuild = false;
  return {
    name: 'stars',
    configResolved: ({ command }) => {
      isBuild = command === 'build';
    },
    resolveId: (id) => (id === name ? `\0${name}` : null),
    load(id) {
      if (id !== `\0${name}`) return null;
      if (!isBuild) return `export default "data:;base64,${Buffer.from(packedStars()).toString('base64')}";`;
      const file = this.emitFile({ type: 'asset', name: 'stars.bin', source: packedStars() });
      return `export default import.meta.ROLLUP_FILE_URL_${file};`;
    },
  };
};
