import { card } from './card.ts';
import { check } from './check.ts';
import { type Command, CommandError, oneLine, type Terminal } from './command.ts';
import { explain } from './explain.ts';
import { picture } from './picture.ts';
import { readings } from './readings.ts';
import { sweep } from './sweep.ts';

const commands = new Map<string, Command>(Object.entries({ check, readings, sweep, picture, card, explain }));

/** "lampfall check|readings FILE, lampfall explain [NAME], or --help". */
const shortUsage = (): string => {
  const ofFiles = [...commands].flatMap(([name, { usage }]) => (usage.includes(' FILE') ? [name] : []));
  const others = [...commands.values()].flatMap(({ usage }) => (usage.includes(' FILE') ? [] : [usage]));
  return [`lampfall ${ofFiles.join('|')} FILE`, ...others, 'or --help'].join(', ');
};

const help = (): string =>
  [
    'Rehearse the lighting of a night foreground.',
    '',
    ...[...commands.values()].flatMap(({ usage, about }) => [usage, `    ${about}`]),
    '',
  ].join('\n');

const asksHelp = (word: string): boolean => word === '--help' || word === '-h';

const run = async ([name, ...words]: readonly string[], terminal: Terminal): Promise<void> => {
  if (name === undefined || name === '' || (name.startsWith('-') && !asksHelp(name)))
    throw new CommandError(`a command is missing; usage: ${shortUsage()}`);
  if (asksHelp(name)) {
    terminal.print(help());
    return;
  }
  const command = commands.get(name);
  if (!command) throw new CommandError(`there is no command "${name}"; usage: ${shortUsage()}`);
  if (words.some(asksHelp)) terminal.print(`${command.usage}\n    ${command.about}\n`);
  else await command.run(words, terminal);
};

/** Runs one line, as typed after `lampfall`. Throws nothing: faults are told, and the exit status says so. */
export const runLine = async (line: readonly string[], terminal: Terminal): Promise<0 | 1> => {
  try {
    await run(line, terminal);
    return 0;
  } catch (error) {
    const message = error instanceof Error ? error.message : String(error);
    const prefix = error instanceof CommandError ? 'lampfall' : 'lampfall: a fault of the program';
    terminal.tell(`${prefix}: ${oneLine(message)}\n`);
    return 1;
  }
};
