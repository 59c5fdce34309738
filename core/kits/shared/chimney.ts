import { finishNamed } from '../../setup/finish-presets.ts';
import type { FinishDraft, PartDraft } from '../kit.ts';
import { placeTogether } from './frame.ts';

/** Where a chimney stands and how large it is, metres. */
interface Chimney {
  /** Its middle, east of the middle of the house. */
  readonly east: number;
  /** East to west; it is a tenth deeper. */
  readonly side: number;
  readonly foot: number;
  /** Of the stack, under cap and pot. */
  readonly top: number;
}

/** A chimney: stack, cap in its own finish, and pot. */
export const chimneyParts = ({ east, side, foot, top }: Chimney, capFinish: FinishDraft): PartDraft[] => {
  const stack: PartDraft[] = [
    {
      kind: 'box',
      name: 'Chimney',
      position: [0, 0, foot],
      widthMetres: side,
      depthMetres: side * 1.1,
      heightMetres: top - foot,
    },
    {
      kind: 'box',
      name: 'Chimney cap',
      position: [0, 0, top - 0.01],
      widthMetres: side + 0.1,
      depthMetres: side * 1.1 + 0.1,
      heightMetres: 0.07,
      finish: capFinish,
    },
    {
      kind: 'cylinder',
      name: 'Chimney pot',
      position: [0, 0, top + 0.05],
      radiusMetres: 0.11,
      topRadiusMetres: 0.09,
      heightMetres: 0.3,
      sides: 16,
      finish: finishNamed('brick'),
    },
  ];
  return placeTogether(stack, { position: [east, 0, 0] });
};
