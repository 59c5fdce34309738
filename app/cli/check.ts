import { reportSetup, type SchemeReport } from '../../core/cautions/setup-report.ts';
import type { Setup } from '../../core/setup/schema/setup.ts';
import type { Command } from './command.ts';
import { loadSetup } from './load-setup.ts';
import { readWords } from './read-words.ts';

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** Cautions of a scheme, one a line: how bad, scheme, what and what to do. */
const cautionLines = (report: SchemeReport): string[] =>
  report.cautions.map(({ severity, message }) => `  ${severity.padEnd(7)}  ${report.name} · ${message}`);

/** What `check` prints for a setup that is good. */
export const checkText = (setup: Setup): string => {
  const { schemes } = reportSetup(setup);
  const passes = schemes.flatMap(({ frames }) => frames.flatMap((frame) => frame.passes)).length;
  const cautions = schemes.flatMap((scheme) => scheme.cautions).length;
  const counts = [
    counted(schemes.length, 'scheme', 'schemes'),
    counted(passes, 'pass', 'passes'),
    counted(cautions, 'caution', 'cautions'),
  ];
  const head = `${setup.name}: good. ${counts.join(', ')}`;
  return `${[head, ...schemes.flatMap(cautionLines)].join('\n')}\n`;
};

const usage = 'lampfall check FILE';

export const check: Command = {
  usage,
  about: 'says whether a setup file is good, and lists its cautions',
  run: (words, { print }) => {
    const { file } = readWords(words, {}, usage);
    print(checkText(loadSetup(file)));
  },
};
