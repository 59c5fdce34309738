import { headShare } from './head-share.ts';
import type { Opening, PartOf } from './schema/setup.ts';

/** A place on a wall seen from the south. */
type Place = readonly [east: number, up: number];

/** Chords of a half circle, and of each of the two arcs of a pointed head. */
const roundChords = 24;
const pointedChords = 12;

/** An opening that begins so near the foot of the wall is a doorway, metres. */
const doorSillMetres = 0.001;

/** Places on a circle about a centre, both ends included. */
const arc = ([east, up]: Place, radius: number, from: number, to: number, chords: number): Place[] =>
  Array.from({ length: chords + 1 }, (_, k): Place => {
    const angle = from + ((to - from) * k) / chords;
    return [east + radius * Math.cos(angle), up + radius * Math.sin(angle)];
  });

/**
 * The head of an opening from its east to its west springing. A round head is half a circle; a pointed one two arcs as
 * wide as the opening, each about the other's springing.
 */
const headOf = ({ acrossMetres, sillMetres, widthMetres, heightMetres, head }: Opening): Place[] => {
  const [west, east] = [acrossMetres - widthMetres / 2, acrossMetres + widthMetres / 2];
  const spring = sillMetres + heightMetres - widthMetres * headShare[head];
  if (head === 'flat')
    return [
      [east, spring],
      [west, spring],
    ];
  if (head === 'round') return arc([acrossMetres, spring], widthMetres / 2, 0, Math.PI, roundChords);
  const eastArc = arc([west, spring], widthMetres, 0, Math.PI / 3, pointedChords);
  const westArc = arc([east, spring], widthMetres, (2 * Math.PI) / 3, Math.PI, pointedChords);
  return [...eastArc, ...westArc.slice(1)];
};

/** An opening from the west end of its sill over the head and back, clockwise seen from the south. */
const openingOutline = (opening: Opening, foot: number): Place[] => {
  const { acrossMetres, widthMetres } = opening;
  const jambs: readonly Place[] = [
    [acrossMetres - widthMetres / 2, foot],
    [acrossMetres + widthMetres / 2, foot],
  ];
  return [jambs[0] as Place, ...headOf(opening).reverse(), jambs[1] as Place];
};

/**
 * A wall seen from the south: its outline counter-clockwise, doorways cut out of its foot, and the windows' outlines.
 * [east, up] in metres from the middle of its foot.
 */
export const wallOutline = ({
  widthMetres,
  heightMetres,
  gableMetres,
  openings,
}: PartOf<'wall'>): { readonly outline: readonly Place[]; readonly windows: readonly (readonly Place[])[] } => {
  const half = widthMetres / 2;
  const isDoor = (opening: Opening) => opening.sillMetres <= doorSillMetres;
  const doors = openings.filter(isDoor).sort((a, b) => a.acrossMetres - b.acrossMetres);
  const outline: readonly Place[] = [
    [-half, 0],
    ...doors.flatMap((door) => openingOutline(door, 0)),
    [half, 0],
    [half, heightMetres],
    ...(gableMetres > 0 ? ([[0, heightMetres + gableMetres]] as const) : []),
    [-half, heightMetres],
  ];
  return { outline, windows: openings.filter((o) => !isDoor(o)).map((o) => openingOutline(o, o.sillMetres)) };
};
