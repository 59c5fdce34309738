import type { Import } from './read-imports.ts';

const worldSees = ['units', 'colour', 'geometry', 'photometry', 'camera', 'setup', 'sky', 'scan', 'walk'];
const traceSees = [...worldSees, 'world'];
const readingsSee = [...traceSees, 'trace', 'passes'];
const cautionsSee = [...readingsSee, 'readings'];

/** What each folder of core may import beside itself (shared/design.md, "Direction"). */
const coreFolders: Readonly<Record<string, readonly string[]>> = {
  units: [],
  colour: ['units'],
  geometry: ['units'],
  photometry: ['units', 'colour', 'geometry'],
  camera: ['units', 'geometry'],
  sky: ['units', 'colour', 'geometry'],
  scan: ['units', 'colour', 'geometry', 'setup'],
  share: ['units', 'setup', 'scan'],
  setup: ['units'],
  walk: ['units', 'geometry', 'setup'],
  world: worldSees,
  trace: traceSees,
  passes: [...traceSees, 'trace'],
  readings: readingsSee,
  cautions: cautionsSee,
  testshot: readingsSee,
  bag: ['units', 'setup'],
  kits: ['units', 'geometry', 'setup', 'world'],
  sweep: [...cautionsSee, 'cautions'],
  card: [...cautionsSee, 'cautions'],
};
const corePackages = ['zod', 'fflate', 'astronomy-engine'];

/** What a part of app/web may import beside itself and core: folders of app/web, and packages (null = any). */
interface WebPart {
  readonly folders: readonly string[];
  readonly packages: readonly string[] | null;
  /** Whether it may take in data files, such as the sample setups. */
  readonly assets: boolean;
}
const webParts: Readonly<Record<string, WebPart>> = {
  render: { folders: [], packages: ['three'], assets: false },
  storage: { folders: [], packages: ['idb'], assets: false },
  state: { folders: ['workers', 'scans', 'storage'], packages: ['zustand'], assets: true },
  ui: { folders: [], packages: ['react', 'react-dom'], assets: false },
  picture: { folders: ['state', 'ui', 'render'], packages: ['react'], assets: false },
  sheets: { folders: ['picture', 'state', 'ui', 'render'], packages: ['react', 'react-dom'], assets: false },
  frames: { folders: ['state', 'ui'], packages: ['react'], assets: false },
  photo: { folders: ['picture', 'ui'], packages: ['react', 'exifr'], assets: false },
  scans: { folders: [], packages: ['meshoptimizer', 'three'], assets: false },
  workers: { folders: ['scans', 'storage'], packages: [...corePackages, 'd3-contour', 'virtual:stars'], assets: false },
};
/** Every other folder of app/web is a room of the screen. */
const room: WebPart = {
  folders: ['frames', 'photo', 'picture', 'sheets', 'state', 'storage', 'ui', 'render', 'workers', 'scans'],
  packages: null,
  assets: true,
};

const brokenInCore = (folder: string, { kind, target }: Import): string | null => {
  const may = coreFolders[folder];
  if (!may) return `core/${folder} is not a folder that the rules know`;
  if (kind === 'node') return 'core imports no node modules';
  if (kind === 'package')
    return corePackages.includes(target) ? null : `core may import ${corePackages.join(', ')} only`;
  const [top, other = ''] = target.split('/');
  if (top !== 'core') return 'core imports core only';
  return other === folder || may.includes(other) ? null : `core/${folder} may not import core/${other}`;
};

/** What terminal and page share of the card: it runs in both. */
const cardPackages = ['pdfkit', 'fontkit', 'fast-png'];

const brokenInCard = ({ kind, target }: Import): string | null => {
  if (kind === 'node') return 'app/card runs in the page too, which has no node modules';
  if (kind === 'package')
    return cardPackages.includes(target) ? null : `app/card may import ${cardPackages.join(', ')} only`;
  return /^(core|app\/card)\//.test(target) ? null : `app/card may not import ${target}`;
};

const brokenInWeb = (folder: string, { kind, target }: Import): string | null => {
  const part = webParts[folder] ?? room;
  const own = `app/web/${folder}`;
  if (kind === 'node') return 'the page has no node modules';
  if (kind === 'package') return part.packages?.includes(target) === false ? `${own} may not import ${target}` : null;
  if (target.startsWith('core/') || target.startsWith(`${own}/`)) return null;
  if (target.startsWith('app/card/') && !(folder in webParts)) return null;
  if (part.assets && /^(assets\/.*\.(json|md)|package\.json)$/.test(target)) return null;
  const other = /^app\/web\/([^/]+)\//.exec(target)?.[1];
  return other !== undefined && part.folders.includes(other) ? null : `${own} may not import ${target}`;
};

/** Why an import goes the wrong way, or null when it may be. Files outside core and app are not judged. */
export const brokenRule = (imported: Import): string | null => {
  const { file, kind, target, takesDefault } = imported;
  if (kind === 'unreadable') return 'a dynamic import must name its file in quotes';
  if (takesDefault && kind === 'file' && target.startsWith('core/')) return 'core has no default exports';
  const [top, second = '', third = ''] = file.split('/');
  if (top === 'core') return brokenInCore(second, imported);
  if (top !== 'app') return null;
  if (second === 'cli') return target.startsWith('app/web') ? 'app/cli may not import app/web' : null;
  if (second === 'card') return brokenInCard(imported);
  if (target.startsWith('app/cli')) return 'app/web may not import app/cli';
  // files that lie in app/web itself, such as main.tsx, join the rooms and see all of them
  return file.split('/').length > 3 ? brokenInWeb(third, imported) : null;
};
