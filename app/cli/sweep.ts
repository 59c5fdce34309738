import type { Frame, Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { type FoundPass, type PassPlace, passAt } from '../../core/sweep/pass-at.ts';
import { readCell } from '../../core/sweep/read-cell.ts';
import { sweepCells } from '../../core/sweep/sweep-cells.ts';
import type { SweepKind } from '../../core/sweep/sweep-plan.ts';
import { type Command, CommandError } from './command.ts';
import { loadSetup } from './load-setup.ts';
import { readWords, type Words } from './read-words.ts';
import { faultOf, planOf } from './sweep-plan-words.ts';
import { type ReadSweepCell, sweepTable } from './sweep-table.ts';

const usage =
  'lampfall sweep FILE --pass ID [--scheme ID] [--frame ID] [--steps 12] [--heights 0.3,1,2.1] [--distances 2,4,8] [--ratios 0,1,2,3,4] [--gels] [--json]';

const unknown = (word: string, id: string, items: readonly { readonly id: string }[]): CommandError =>
  new CommandError(
    `--${word}: there is no ${word} "${id}"; known: ${items.map((item) => item.id).join(', ') || 'none'}`,
  );

/** Where the pass is that is asked for: without choice in the first scheme, and there in the last frame that has it. */
const chosen = (setup: Setup, words: Words): PassPlace => {
  const passId = words.option('pass');
  if (!passId) throw new CommandError(`--pass is missing; usage: ${usage}`);
  const [schemeId, frameId] = [words.option('scheme'), words.option('frame')];
  const scheme =
    schemeId === undefined ? (setup.schemes[0] as Scheme) : setup.schemes.find(({ id }) => id === schemeId);
  if (!scheme) throw unknown('scheme', schemeId as string, setup.schemes);
  const frames = scheme.frames.filter(({ id }) => frameId === undefined || id === frameId);
  if (frames.length === 0) throw unknown('frame', frameId as string, scheme.frames);
  const frame = frames.findLast(({ passes }) => passes.some(({ id }) => id === passId));
  if (!frame)
    throw unknown(
      'pass',
      passId,
      frames.flatMap(({ passes }: Frame) => passes),
    );
  return { schemeId: scheme.id, frameId: frame.id, passId };
};

/** What `lampfall sweep --json` prints; names are kept from version to version. */
const sweepJson = (setup: Setup, place: PassPlace, kind: SweepKind, cells: readonly ReadSweepCell[]) => ({
  setup: setup.id,
  scheme: place.schemeId,
  frame: place.frameId,
  pass: place.passId,
  kind,
  cells: cells.map(({ cell: { row, column, pass, missStops, note }, reading, cautions }) => ({
    row,
    column,
    place: pass.waypoints[0]?.position,
    seconds: pass.off - pass.on,
    levelPercent: pass.levelPercent,
    missStops,
    note,
    reading,
    cautions,
  })),
});

const headOf = ({ scheme, frame, pass }: FoundPass, kind: SweepKind): string =>
  `${scheme.name}, ${frame.name}, ${pass.name}: ${kind}`;

export const sweep: Command = {
  usage,
  about:
    'changes one pass step by step and reads each step: place on the clock, unless told otherwise; --steps 1 keeps the clock and changes the height',
  run: (line, { print }) => {
    const [text, flag] = [{ type: 'string' }, { type: 'boolean' }] as const;
    const options = {
      pass: text,
      scheme: text,
      frame: text,
      steps: text,
      heights: text,
      distances: text,
      ratios: text,
    };
    const words = readWords(line, { ...options, gels: flag, json: flag }, usage);
    const setup = loadSetup(words.file);
    const place = chosen(setup, words);
    try {
      const found = passAt(setup, place);
      const plan = planOf(words, found.pass, found.lamp, usage);
      const cells = sweepCells(setup, place, plan).map((cell) => ({ cell, ...readCell(setup, place, cell) }));
      const isPlaced = plan.kind === 'angles' || plan.kind === 'heights';
      const tableOptions = { isPlaced, hasPatch: setup.patch !== null };
      const out = words.isSet('json')
        ? JSON.stringify(sweepJson(setup, place, plan.kind, cells), null, 2)
        : [headOf(found, plan.kind), ...sweepTable(cells, tableOptions)].join('\n');
      print(`${out}\n`);
    } catch (error) {
      throw faultOf(error);
    }
  },
};
