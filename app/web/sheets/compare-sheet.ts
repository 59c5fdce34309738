import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { Marks } from '../state/picture-marks.ts';
import { fileStem } from '../ui/file-stem.ts';
import { sharedPlanView } from '../ui/plan-view.ts';
import { settingWords } from './setting-words.ts';
import type { Sheet, SheetCell } from './sheet.ts';

/** What stands under a tile: its passes, then numbers with their sense. */
interface WordsOfTile {
  readonly passes: readonly string[];
  /** The pass that the numbers are about where there are several; else null. */
  readonly keyName: string | null;
  readonly rows: readonly { readonly label: string; readonly value: string; readonly sense: string }[];
}

/** A tile of the compare room. */
interface ComparedTile {
  readonly scheme: Scheme;
  readonly isUnlit: boolean;
  /** null while they are worked out, and for the picture without lamps. */
  readonly words: WordsOfTile | null;
  /** Cautions in a word each. */
  readonly cautions: readonly string[];
}

interface Compared {
  readonly setup: Setup;
  readonly tiles: readonly ComparedTile[];
  readonly frame: Frame | null;
  readonly marks: Pick<Marks, 'full' | 'levels'>;
  readonly samples: number;
}

const linesOf = ({ words, cautions }: ComparedTile): string[] => [
  ...(words?.passes ?? []),
  ...(words?.keyName ? [`Of ${words.keyName}:`] : []),
  ...(words?.rows ?? []).flatMap(({ label, value, sense }) =>
    value || sense ? [`${label}: ${[value, sense].filter(Boolean).join(', ')}`] : [],
  ),
  ...(cautions.length > 0 ? [`Cautions: ${cautions.join(', ')}`] : []),
];

/** Two by two looks better than three and one. */
const columnsFor = (count: number): number => (count === 4 ? 2 : Math.min(count, count > 6 ? 4 : 3));

/** The sheet of the compare room: every tile with its plan, all plans to one scale, and its numbers. */
export const compareSheet = ({ setup, tiles, frame, marks, samples }: Compared): Sheet => {
  const view = sharedPlanView(
    setup,
    tiles.map(({ scheme }) => scheme),
  );
  const settings = tiles.map(({ scheme }) => settingWords(setup, scheme, frame));
  const cells = tiles.map((tile, i): SheetCell => {
    const { scheme, isUnlit } = tile;
    const { sensor } = scheme.camera ?? setup.camera;
    const name = isUnlit ? 'Unlit' : scheme.name;
    const own = settings[i] === settings[0] ? [] : [settings[i] as string];
    return {
      name,
      lines: [...own, ...(isUnlit ? ['Without lamps'] : linesOf(tile))],
      plan: isUnlit ? null : { setup, scheme, view },
      picture: {
        setup,
        scheme,
        isUnlit,
        screen: `sheet/${i}`,
        look: marks.levels ? 'levels' : 'picture',
        against: null,
        marksFull: marks.full,
      },
      aspect: sensor.widthMm / sensor.heightMm,
    };
  });
  return {
    fileName: `${fileStem(setup)}-compare`,
    title: setup.name,
    subtitle: settings[0] ?? '',
    hasLevelKey: marks.levels,
    columns: columnsFor(tiles.length),
    groups: [{ name: '', cells }],
    frame,
    samples,
  };
};
