import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { tidyParts } from './shared/tidy-parts.ts';

const boardThickMetres = 0.04;
const bearer = { wideMetres: 0.08, deepMetres: 0.16 };
const post = { radiusMetres: 0.1, sunkMetres: 0.3, fromEdgeMetres: 0.12 };
const rail = { heightMetres: 1, postMetres: 0.09, fromEdgeMetres: 0.06 };
/** Boards lie a little lower here and there, and no two end at the same place. */
const uneven = { downMetres: 0.004, shortMetres: 0.03 };

interface Deck {
  readonly length: number;
  readonly width: number;
  readonly top: number;
}

/** Places along the deck that are exactly so far apart, with as little as can be left over at both ends. */
const evenPlaces = (length: number, spacing: number): number[] => {
  const room = length / 2 - post.radiusMetres;
  const whole = Math.floor(room / spacing);
  const half = Math.floor(room / spacing - 0.5);
  const startsOff = half >= 0 && (half + 0.5) * spacing > whole * spacing;
  return startsOff
    ? Array.from({ length: 2 * half + 2 }, (_, k) => (k - half - 0.5) * spacing)
    : Array.from({ length: 2 * whole + 1 }, (_, k) => (k - whole) * spacing);
};

const boards = ({ length, width, top }: Deck, wide: number, gap: number, random: () => number): PartDraft[] => {
  const count = Math.max(Math.round((length + gap) / (wide + gap)), 1);
  const depthMetres = (length + gap) / count - gap;
  return Array.from({ length: count }, (_, k) => {
    const low = random() * uneven.downMetres;
    const short = random() * uneven.shortMetres;
    const off = (random() - 0.5) * short;
    // the outer ones have the size that was typed
    const outer = k === 0 || k === count - 1;
    return {
      kind: 'box',
      name: 'Board',
      position: [
        outer ? 0 : off,
        (k + 0.5) * (depthMetres + gap) - gap / 2 - length / 2,
        top - boardThickMetres - (outer ? 0 : low),
      ],
      widthMetres: outer ? width : width - short,
      depthMetres,
      heightMetres: boardThickMetres,
    };
  });
};

const under = ({ length, width, top }: Deck, places: readonly number[]): PartDraft[] => {
  const bearerTop = top - boardThickMetres + 0.002;
  const side = width / 2 - post.fromEdgeMetres;
  const crossLow = bearerTop - bearer.deepMetres - 0.1;
  const bearers = [-1, 0, 1].map(
    (across): PartDraft => ({
      kind: 'box',
      name: 'Bearer',
      position: [across * (side - post.radiusMetres - bearer.wideMetres / 2), 0, bearerTop - bearer.deepMetres],
      widthMetres: bearer.wideMetres,
      depthMetres: length - 0.04,
      heightMetres: bearer.deepMetres,
    }),
  );
  return [
    ...bearers,
    ...places.flatMap((north): PartDraft[] => [
      {
        kind: 'box',
        name: 'Cross beam',
        position: [0, north, crossLow],
        widthMetres: width - 0.06,
        depthMetres: 0.1,
        heightMetres: 0.11,
      },
      ...[-1, 1].map(
        (across): PartDraft => ({
          kind: 'cylinder',
          name: 'Post',
          position: [across * side, north, -post.sunkMetres],
          radiusMetres: post.radiusMetres,
          heightMetres: bearerTop - 0.005 + post.sunkMetres,
          sides: 16,
        }),
      ),
    ]),
  ];
};

const railOn = ({ length, width, top }: Deck, places: readonly number[], side: number): PartDraft[] => {
  const east = side * (width / 2 - rail.fromEdgeMetres);
  const along = (name: string, low: number, heightMetres: number): PartDraft => ({
    kind: 'box',
    name,
    position: [east, 0, top + low],
    widthMetres: 0.05,
    depthMetres: length - 0.1,
    heightMetres,
  });
  // the rail ends on a post, which takes the place of one that stands near
  const end = length / 2 - 0.1;
  const posts = [-end, ...places.filter((north) => Math.abs(north) < end - 0.3), end];
  return [
    ...posts.map(
      (north): PartDraft => ({
        kind: 'box',
        name: 'Rail post',
        position: [east, north, top - 0.1],
        widthMetres: rail.postMetres,
        depthMetres: rail.postMetres,
        heightMetres: rail.heightMetres + 0.1 - 0.03,
      }),
    ),
    along('Hand rail', rail.heightMetres - 0.1, 0.1),
    along('Middle rail', rail.heightMetres / 2 - 0.05, 0.09),
  ];
};

const railSides: readonly (readonly number[])[] = [[], [1], [-1], [-1, 1]];

export const jetty: Kit = {
  name: 'jetty',
  label: 'Jetty',
  says: 'A timber jetty on posts that runs away from the front. The ground is taken for the water.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 3, max: 60, initial: 40, step: 1 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 0.9, max: 6, initial: 1.6, step: 0.1 },
    { key: 'deckMetres', label: 'Height of the deck', unit: 'm', min: 0.4, max: 4, initial: 0.8, step: 0.05 },
    { key: 'boardMetres', label: 'Width of a board, about', unit: 'm', min: 0.1, max: 1, initial: 0.2, step: 0.01 },
    { key: 'gapMetres', label: 'Gap between boards', unit: 'm', min: 0, max: 0.05, initial: 0.012, step: 0.001 },
    { key: 'postMetres', label: 'From post to post', unit: 'm', min: 1, max: 6, initial: 2.5, step: 0.1 },
    {
      key: 'rail',
      label: 'Rail',
      unit: '',
      min: 0,
      max: 3,
      initial: 1,
      step: 1,
      choices: ['None', 'Right side', 'Left side', 'Both sides'],
    },
  ],
  make: (
    {
      lengthMetres = 40,
      widthMetres = 1.6,
      deckMetres = 0.8,
      boardMetres = 0.2,
      gapMetres = 0,
      postMetres = 2.5,
      rail: railed = 1,
    },
    random,
  ) => {
    const deck: Deck = { length: lengthMetres, width: widthMetres, top: deckMetres };
    const places = evenPlaces(lengthMetres, postMetres);
    const parts = [
      ...boards(deck, boardMetres, gapMetres, random),
      ...under(deck, places),
      ...(railSides[railed] as readonly number[]).flatMap((side) => railOn(deck, places, side)),
    ];
    return { finish: finishNamed('weathered-timber'), parts: tidyParts(parts) };
  },
};
