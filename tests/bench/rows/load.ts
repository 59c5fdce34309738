import type { LoadTimes } from '../load.ts';
import type { Row } from '../table.ts';

/** Issue bars of a first visit: code before the first picture, gzipped; and that picture, coarse, after the navigation. */
const mostCodeBytes = 450_000;
const mostMs = 4000;

export const loadRows = ({ codeBytes, draftMs, pictureMs }: LoadTimes): Row[] => [
  {
    what: 'a first visit: code before the first picture, gzipped',
    measured: `${(codeBytes / 1000).toFixed(0)} kB`,
    ratio: '',
    goal: 'at most 450 kB',
    isMet: codeBytes <= mostCodeBytes,
  },
  {
    what: 'a first visit: first picture of the sample, coarse · full size',
    measured: `${(draftMs / 1000).toFixed(1)} s · ${(pictureMs / 1000).toFixed(1)} s`,
    ratio: '',
    goal: 'at most 4 s',
    isMet: draftMs <= mostMs,
  },
];
