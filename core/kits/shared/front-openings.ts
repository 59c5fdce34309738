import type { FinishDraft, PartDraft } from '../kit.ts';

/** A doorway or window of a wall. */
export type OpeningDraft = NonNullable<Extract<PartDraft, { kind: 'wall' }>['openings']>[number];

/** The wall that the openings are in, metres. */
interface FrontWall {
  /** Outside, from end to end. */
  readonly width: number;
  readonly eaves: number;
  readonly thick: number;
}

/** What is left of wall beside and over a doorway or window at least. */
const leastWallMetres = 0.2;
/** Of a lintel; it fits under the eaves. */
const lintelMetres = 0.18;

/** Doorway and windows side by side along the front, each kept within its share of it; sizes in metres. */
export const frontOpenings = (
  { width, eaves, thick }: FrontWall,
  door: { readonly wide: number; readonly high: number },
  pane: { readonly wide: number; readonly high: number; readonly count: number },
): OpeningDraft[] => {
  const inner = width - 2 * thick;
  const share = inner / (pane.count + 1);
  // one window stands east of the doorway, two stand at its sides
  const middles = Array.from({ length: pane.count + 1 }, (_, k) => -inner / 2 + share * (k + 0.5));
  const doorAt = pane.count === 2 ? 1 : 0;
  const most = { wide: share - leastWallMetres, high: eaves - leastWallMetres };
  const doorHigh = Math.min(door.high, most.high);
  return middles.map((acrossMetres, k): OpeningDraft => {
    if (k === doorAt)
      return { acrossMetres, sillMetres: 0, widthMetres: Math.min(door.wide, most.wide), heightMetres: doorHigh };
    const heightMetres = Math.min(pane.high, most.high - 0.15);
    // heads in one line where there is room for a sill
    const sillMetres = Math.max(Math.min(doorHigh, most.high) - heightMetres, 0.15);
    return { acrossMetres, sillMetres, widthMetres: Math.min(pane.wide, most.wide), heightMetres };
  });
};

/**
 * Lintels and sills stand out of the wall a little and leave the opening free.
 *
 * @param face where the outside of the wall is, north of the house's middle, metres
 */
export const dressings = (face: number, openings: readonly OpeningDraft[], finish: FinishDraft): PartDraft[] =>
  openings.flatMap(({ acrossMetres, sillMetres, widthMetres, heightMetres }): PartDraft[] => {
    const stone = (name: string, foot: number, wide: number, high: number, out: number): PartDraft => ({
      kind: 'box',
      name,
      position: [acrossMetres, face + 0.06 - out / 2, foot],
      widthMetres: wide,
      depthMetres: 0.12 + out,
      heightMetres: high,
      finish,
    });
    return [
      stone('Lintel', sillMetres + heightMetres + 0.002, widthMetres + 0.3, lintelMetres, 0.02),
      ...(sillMetres > 0.15 ? [stone('Sill', sillMetres - 0.09, widthMetres + 0.16, 0.088, 0.05)] : []),
    ];
  });
