import { aboutCautions } from '../../core/cautions/about/all-cautions.ts';
import { aboutReadings } from '../../core/readings/about/all-readings.ts';
import type { About } from '../../core/units/about.ts';
import { alignedRows } from './align-rows.ts';
import { type Command, CommandError } from './command.ts';

const usage = 'lampfall explain [NAME]';

const kinds: readonly (readonly [kind: string, texts: Readonly<Record<string, About>>])[] = [
  ['caution', aboutCautions],
  ['reading', aboutReadings],
];

const bothLeft = new Set([0, 1]);

const list = (): string =>
  kinds
    .map(([kind, texts]) =>
      [
        `${kind}s`,
        ...alignedRows(
          Object.entries(texts).map(([id, { name }]) => [id, name]),
          bothLeft,
        ),
      ].join('\n'),
    )
    .join('\n\n');

/** What stands behind a name: a reading and a caution may share one. */
const explained = (name: string): string => {
  const found = kinds.flatMap(([kind, texts]) => {
    const about = Object.hasOwn(texts, name) ? texts[name] : undefined;
    return about ? [[`${about.name} (${kind})`, about.says, about.rule, `Source: ${about.source}`].join('\n')] : [];
  });
  if (found.length === 0)
    throw new CommandError(`nothing is called "${name}"; lampfall explain lists the names; usage: ${usage}`);
  return found.join('\n\n');
};

export const explain: Command = {
  usage,
  about: 'says what a caution or a reading means, how it is worked out, and where that comes from',
  run: (words, { print }) => {
    const [name, more] = words;
    if (more !== undefined) throw new CommandError(`one name at a time, not also "${more}"; usage: ${usage}`);
    print(`${name === undefined ? list() : explained(name)}\n`);
  },
};
