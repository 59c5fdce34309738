import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { type Box, boxRound, meet } from './plan-dial.ts';
import { planHalf } from './plan-view.ts';
import { edgePoint, levelOfBearing, turnToDrawing } from './sky-wheel.ts';

/** Something of the sky that is marked at the edge of the ground plan. */
export interface SkySign {
  readonly kind: 'moon' | 'core' | 'glow';
  /** Level direction of it, [east, north] of the scene. */
  readonly level: GroundPoint;
  readonly text: string;
  /** Whether it stands low enough to throw shadows worth the name to one side. */
  readonly isSlanting: boolean;
}

/** The sign with its place on the drawing. */
export interface EdgeMark extends SkySign {
  readonly at: GroundPoint;
  /** Unit direction from the plan's middle toward it, on the drawing. */
  readonly toward: GroundPoint;
  readonly textAt: GroundPoint;
  readonly anchor: 'start' | 'end';
}

/** Higher than that a moon's shadows are about a third as long as things are high, or shorter: our choice. */
const steepDegrees = 70;

/** A sign of something in the sky. Null where it is not over the horizon. */
export const skySign = (kind: 'moon' | 'core', [x, y, z]: Vec3): SkySign | null => {
  if (y <= 0) return null;
  const degrees = Math.round((Math.atan2(y, Math.hypot(x, z)) * 180) / Math.PI);
  return { kind, level: [x, -z], text: `${kind} ${degrees}°`, isSlanting: kind === 'moon' && degrees <= steepDegrees };
};

/** Longest name on the drawing, letters; the list of towns has all of it. */
const mostLetters = 16;
const shortName = (name: string): string => {
  const letters = [...name];
  return letters.length > mostLetters
    ? `${letters
        .slice(0, mostLetters - 1)
        .join('')
        .trimEnd()}…`
    : name;
};

/** A sign of a town's glow. */
export const glowSign = (bearingDegrees: number, northDegrees: number, name: string): SkySign => ({
  kind: 'glow',
  level: levelOfBearing(bearingDegrees, northDegrees),
  text: shortName(name) || 'glow',
  isSlanting: false,
});

/** From where to where the arrow of the shadows runs, inward of the moon: clear of the clock's numeral. */
export const arrowReach = [20, 44] as const;

/** How far in from the drawing's edge a glyph stands, and its words beside it. */
const [inset, beside] = [9, 12];
/** Where another is in the way, it stands farther in, in its true direction. */
const inwards = [0, 18, 36, 54, 76, 98, 120] as const;

const isInside = ({ left, top, right, bottom }: Box) =>
  Math.min(left, top) >= -planHalf && Math.max(right, bottom) <= planHalf;

/** Which side of a glyph its words are tried on, in lines away: a second line only where they stand under or over it. */
const sides = [1, -1, 2, -2] as const;

/** Words stand beside a glyph along the upper and lower edge, under or over it along the sides. */
const wordsAt = ([x, y]: GroundPoint, side: (typeof sides)[number]): Pick<EdgeMark, 'textAt' | 'anchor'> => {
  if (Math.abs(x) > Math.abs(y)) {
    const down = Math.sign(side) * (y > 0 ? -1 : 1);
    return {
      textAt: [x + (x > 0 ? 6 : -6), y + down * (3 + 12 * Math.abs(side)) + 4],
      anchor: x > 0 ? 'end' : 'start',
    };
  }
  const right = Math.sign(side) * (x > 0 ? -1 : 1);
  return { textAt: [x + right * beside, y + 4], anchor: right > 0 ? 'start' : 'end' };
};

/** What a mark's words cover; nothing where it has none. */
const wordBoxes = ({ text, textAt: [x, y], anchor }: EdgeMark): Box[] => {
  const width = 6.2 * text.length;
  const from = anchor === 'start' ? x : x - width;
  return text === '' ? [] : [{ left: from, right: from + width, top: y - 9, bottom: y + 3 }];
};

/** What its glyph and its arrow cover. */
const glyphBoxes = ({ at, toward, isSlanting }: EdgeMark): Box[] => {
  const arrow = arrowReach.map((far): GroundPoint => [at[0] - toward[0] * far, at[1] - toward[1] * far]);
  return [boxRound([at], 7), ...(isSlanting ? [boxRound(arrow, 4)] : [])];
};

/**
 * Signs at the edge of a square drawing, each in its true direction. Where one would lie on another that comes before it,
 * or past the edge, its words change sides, or it stands farther in; where there is no room for its words at all, it has
 * none.
 *
 * @param up level unit direction that is up on the drawing
 * @param drawn what stands there already
 * @param read what else is read there: words keep off it, while a glyph may stand close by
 */
export const edgeMarks = (
  up: GroundPoint,
  signs: readonly SkySign[],
  drawn: readonly Box[] = [],
  read: readonly Box[] = [],
): EdgeMark[] => {
  const taken: Box[] = [...drawn];
  return signs.map((sign) => {
    const [x, y] = turnToDrawing(up, sign.level);
    const away = Math.max(Math.hypot(x, y), 1e-9);
    const toward: GroundPoint = [x / away, y / away];
    const edge = edgePoint(toward, planHalf - inset);
    const candidates = inwards.flatMap((inward) =>
      sides.map((side): EdgeMark => {
        const at: GroundPoint = [edge[0] - toward[0] * inward, edge[1] - toward[1] * inward];
        return { ...sign, at, toward, ...wordsAt(at, side) };
      }),
    );
    const keepsOff = (boxes: readonly Box[], others: readonly Box[]) =>
      boxes.every((box) => isInside(box) && !others.some((other) => meet(box, other)));
    const isFree = (mark: EdgeMark) =>
      keepsOff(glyphBoxes(mark), taken) && keepsOff(wordBoxes(mark), [...taken, ...read]);
    const wordless = candidates.map((mark) => ({ ...mark, text: '' }));
    const mark = [...candidates, ...wordless].find(isFree) ?? (wordless[0] as EdgeMark);
    taken.push(...glyphBoxes(mark), ...wordBoxes(mark));
    return mark;
  });
};
