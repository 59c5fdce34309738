import type { FinishDraft } from '../kit.ts';
import { between, unevenPieces } from './between.ts';
import { type LoftDraft, loftExtents, shifted } from './loft-extents.ts';
import { pick } from './tones.ts';

/** What the cope lies on, metres. */
interface CopedWall {
  readonly length: number;
  /** At its top. */
  readonly thick: number;
  /** Where the wall ends and the cope begins. */
  readonly from: number;
  /** With the cope. */
  readonly height: number;
  readonly tones: readonly FinishDraft[];
  readonly random: () => number;
}

/** Stones on edge, or slabs, that lie across the top; the highest reaches the height that was typed. */
export const copeStones = (
  { length, thick, from, height, tones, random }: CopedWall,
  upright: boolean,
): LoftDraft[] => {
  const low = upright ? 0.75 : 0.88;
  let at = -length / 2;
  const pieces = upright ? unevenPieces(random, length, 0.1, 0.2) : unevenPieces(random, length, 0.4, 0.75);
  const highest = Math.floor(random() * pieces.length);
  return pieces.map((wide, i): LoftDraft => {
    at += wide;
    const top = i === highest ? 1 : between(random, low, 1);
    const [half, tall] = [wide / 2 - between(random, 0, 0.006), (height - from) * top + 0.02];
    const across = (thick / 2) * between(random, 0.94, 1);
    const lean = upright ? between(random, -0.12, 0.12) * Math.min(wide, 0.2) : 0;
    const section = (northMetres: number, share: number) => ({
      northMetres,
      outline: [
        [-half, 0],
        [half, 0],
        [half + lean * 0.4, tall * share * 0.8],
        [half * 0.5 + lean, tall * share],
        [-half * 0.5 + lean, tall * share * 0.98],
        [-half + lean * 0.4, tall * share * 0.75],
      ] as [number, number][],
    });
    const shoulder = () => (upright ? between(random, 0.68, 0.85) : between(random, 0.85, 0.95));
    const stone: LoftDraft = {
      kind: 'loft',
      name: 'Cope stone',
      position: [at - wide / 2, 0, from - 0.02],
      sections: [
        section(-across, shoulder()),
        section(-across * between(random, 0.35, 0.6), 1),
        section(across * between(random, 0.35, 0.6), 1),
        section(across, shoulder()),
      ],
      creaseDegrees: 20,
      finish: pick(random, tones),
    };
    const { low: west, high: east } = loftExtents(stone);
    const beyond = Math.max(east[0] - length / 2, 0) + Math.min(west[0] + length / 2, 0);
    return shifted(stone, [-beyond, 0, 0]);
  });
};
