import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import type { Place } from './shared/frame.ts';
import { rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';

const wireRadiusMetres = 0.0015;
const post = { radiusMetres: 0.055, sunkMetres: 0.3 };
/** Share of the height where the lowest wire runs, and how far under the tops of the posts the highest does. */
const lowestShare = 0.22;
const highestUnderTopMetres = 0.08;
/** Radius of a post at its top over that at its foot. */
const topShare = 0.85;
const piecesOfBay = 6;
/** A loft has at most 48 sections. */
const baysOfWire = 7;
/** Posts have ten sides, and a flat one to the front. */
const flatShare = Math.cos(Math.PI / 10);

interface Post {
  readonly foot: Place;
  readonly top: Place;
}

/** Posts at even distances, the outer ones upright and as high as was typed, so that length and height are exact. */
const postPlaces = (
  length: number,
  height: number,
  apart: number,
  leanDegrees: number,
  random: () => number,
): Post[] => {
  const bays = Math.max(Math.round(length / apart), 1);
  return Array.from({ length: bays + 1 }, (_, k) => {
    const outer = k === 0 || k === bays;
    const [towardEast, towardNorth, short] = [random() * 2 - 1, random() * 2 - 1, random()];
    const lean = outer ? 0 : Math.tan((leanDegrees * Math.PI) / 180);
    const east = (k / bays - 0.5) * (length - 2 * post.radiusMetres);
    const up = height - (outer ? 0 : short * height * 0.04 + post.radiusMetres * lean);
    return { foot: [east, 0, 0], top: [east + towardEast * lean * up * 0.7, towardNorth * lean * up * 0.7, up] };
  });
};

const along = ({ foot, top }: Post, up: number): Place => {
  const t = (up - foot[2]) / (top[2] - foot[2]);
  return [foot[0] + (top[0] - foot[0]) * t, foot[1] + (top[1] - foot[1]) * t, up];
};

/** A wire over a few bays as one part: a square bar that hangs in a parabola from post to post. */
const wire = (ends: readonly Place[], sag: number): PartDraft => {
  const points = ends.slice(1).flatMap((to, bay): Place[] => {
    const from = ends[bay] as Place;
    const first = bay === 0 ? 0 : 1;
    const pieces = sag > 0 ? piecesOfBay : 1;
    return Array.from({ length: pieces + 1 - first }, (_, k) => {
      const t = (k + first) / pieces;
      return [
        from[0] + (to[0] - from[0]) * t,
        from[1] + (to[1] - from[1]) * t,
        from[2] + (to[2] - from[2]) * t - 4 * sag * t * (1 - t),
      ];
    });
  });
  const r = wireRadiusMetres;
  return {
    kind: 'loft',
    name: 'Wire',
    // the loft's own north is turned to the east, so that its own east is the south
    turnDegrees: 90,
    sections: points.map(([east, north, up]) => ({
      northMetres: east,
      outline: [
        [-north - r, up],
        [-north, up - r],
        [-north + r, up],
        [-north, up + r],
      ],
    })),
  };
};

const postPart = ({ foot, top }: Post): PartDraft => {
  const low = along({ foot, top }, -post.sunkMetres);
  return { ...rod('Post', low, top, [post.radiusMetres, post.radiusMetres * topShare], { sides: 10 }) };
};

/** A strut that keeps an end post from being pulled over by its wires. */
const strut = (end: Post, inward: number, height: number): PartDraft =>
  rod(
    'Strut',
    [end.foot[0] + inward * height * 0.7, 0, -0.06],
    along(end, height * 0.7),
    [post.radiusMetres * 0.8, post.radiusMetres * 0.8],
    { sides: 10 },
  );

export const fence: Kit = {
  name: 'fence',
  label: 'Post-and-wire fence',
  says: 'Round posts with wires, running from left to right.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 2, max: 80, initial: 16, step: 0.5 },
    { key: 'heightMetres', label: 'Height', unit: 'm', min: 0.6, max: 2.5, initial: 1.2, step: 0.05 },
    { key: 'postMetres', label: 'From post to post, about', unit: 'm', min: 1, max: 6, initial: 2, step: 0.1 },
    { key: 'wires', label: 'Wires', unit: '', min: 1, max: 6, initial: 4, step: 1 },
    { key: 'sagMetres', label: 'Sag of the wires', unit: 'm', min: 0, max: 0.1, initial: 0.02, step: 0.005 },
    { key: 'leanDegrees', label: 'Posts lean by at most', unit: '°', min: 0, max: 15, initial: 3, step: 1 },
  ],
  make: (
    { lengthMetres = 16, heightMetres = 1.2, postMetres = 2, wires = 4, sagMetres = 0, leanDegrees = 0 },
    random,
  ) => {
    const posts = postPlaces(lengthMetres, heightMetres, postMetres, leanDegrees, random);
    const count = Math.round(wires);
    const ups = Array.from({ length: count }, (_, k) => {
      const [low, high] = [heightMetres * lowestShare, heightMetres * 0.96 - highestUnderTopMetres];
      return count === 1 ? high : low + ((high - low) * k) / (count - 1);
    });
    const wireParts = ups.flatMap((up) => {
      const ends = posts.map((each): Place => {
        const [east, north] = along(each, up);
        // wires run on the front of the posts
        const t = (up + post.sunkMetres) / (heightMetres + post.sunkMetres);
        return [east, north - post.radiusMetres * (1 - (1 - topShare) * t) * flatShare, up];
      });
      return Array.from({ length: Math.ceil((posts.length - 1) / baysOfWire) }, (_, k) =>
        wire(ends.slice(k * baysOfWire, (k + 1) * baysOfWire + 1), sagMetres),
      );
    });
    const [first, last] = [posts[0] as Post, posts.at(-1) as Post];
    const struts = [strut(first, 1, heightMetres), strut(last, -1, heightMetres)];
    const metal = finishNamed('bare-metal');
    return {
      finish: finishNamed('weathered-timber'),
      parts: tidyParts([...posts.map(postPart), ...struts, ...wireParts.map((part) => ({ ...part, finish: metal }))]),
    };
  },
};
