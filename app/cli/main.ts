import { runLine } from './run-line.ts';

// a reader that stops early, such as `head`, is no fault
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  process.exitCode = error.code === 'EPIPE' ? 0 : 1;
});

process.exitCode = await runLine(process.argv.slice(2), {
  print: (text) => process.stdout.write(text),
  tell: (text) => process.stderr.write(text),
  isWatched: process.stderr.isTTY,
});
