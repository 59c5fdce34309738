import { reportSetup } from '../../core/cautions/setup-report.ts';
import type { Command } from './command.ts';
import { loadSetup } from './load-setup.ts';
import { readWords } from './read-words.ts';
import { readingsTable, safetyLine, tableKey } from './readings-table.ts';

const usage = 'lampfall readings FILE [--json]';

export const readings: Command = {
  usage,
  about: 'prints the numbers of every pass, as a table or as JSON',
  run: (words, { print }) => {
    const { file, isSet } = readWords(words, { json: { type: 'boolean' } }, usage);
    const setup = loadSetup(file);
    const text = isSet('json')
      ? JSON.stringify(reportSetup(setup), null, 2)
      : [...readingsTable(setup), ...tableKey, '', safetyLine].join('\n');
    print(`${text}\n`);
  },
};
