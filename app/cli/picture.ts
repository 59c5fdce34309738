import { encode } from 'fast-png';
import { blendEntries } from '../../core/setup/blend-entries.ts';
import type { Frame, Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { unpackStars } from '../../core/sky/star-catalogue.ts';
import { traceBlend } from '../../core/trace/blend.ts';
import type { PictureSize } from '../../core/trace/layer.ts';
import { developPicture, tracePicture } from '../../core/trace/picture.ts';
import { buildWorld, type World, type WorldFrame } from '../../core/world/world.ts';
import { packedStars } from '../build/packed-stars.ts';
import { type Command, CommandError } from './command.ts';
import { loadSetup } from './load-setup.ts';
import { readWords, wholeOption } from './read-words.ts';
import { checkWritable, writeOutput } from './write-output.ts';

const usage = 'lampfall picture FILE --out x.png [--width 480] [--samples 64] [--scheme ID] [--frame ID | --blend]';
const maxPixels = 4096 * 4096;

const pick = <T extends Scheme | Frame>(word: string, items: readonly T[], id: string | undefined, preset: T): T => {
  if (id === undefined) return preset;
  const found = items.find((item) => item.id === id);
  if (found) return found;
  throw new CommandError(`--${word}: there is no ${word} "${id}"; known: ${items.map((item) => item.id).join(', ')}`);
};

/** The scheme and frame that are asked for: else the first scheme, and its last frame. */
const chosen = (setup: Setup, schemeId: string | undefined, frameId: string | undefined): [Scheme, Frame] => {
  const scheme = pick('scheme', setup.schemes, schemeId, setup.schemes[0] as Scheme);
  return [scheme, pick('frame', scheme.frames, frameId, scheme.frames.at(-1) as Frame)];
};

const sizeOf = (world: World, width: number, samples: number): PictureSize => {
  const height = Math.max(Math.round(width / world.aspect), 1);
  if (width * height > maxPixels)
    throw new CommandError(`--width ${width}: the picture would be ${width} x ${height}; at most ${maxPixels} pixels`);
  return { width, height, samples, stars: unpackStars(packedStars()) };
};

/**
 * How long it will take, from a small trial of one frame.
 *
 * @param frames how many are traced
 */
const foretold = (world: World, frame: WorldFrame, frames: number, { width, height, samples }: PictureSize): string => {
  const trial = { width: 48, height: Math.max(Math.round(48 / world.aspect), 1), samples: 4 };
  let start = 0;
  // the first rounds only warm the program up
  for (let round = 0; round < 3; round++) {
    start = performance.now();
    tracePicture(world, frame, trial);
  }
  const each = (performance.now() - start) / (trial.width * trial.height * trial.samples);
  const seconds = (each * frames * width * height * samples) / 1000;
  return `tracing ${width} x ${height}, ${samples} samples: about ${Math.ceil(seconds)} s\n`;
};

/** Eight-bit sRGB PNG of a linear picture. */
const pngOf = (linear: Float64Array, { development }: WorldFrame, { width, height }: PictureSize): Uint8Array =>
  encode({ width, height, channels: 3, depth: 8, data: developPicture(linear, development.response) });

/** Eight-bit sRGB PNG of one frame, traced by the reference. */
export const picturePng = (world: World, frame: WorldFrame, size: PictureSize): Uint8Array =>
  pngOf(tracePicture(world, frame, size), frame, size);

export const picture: Command = {
  usage,
  about: 'traces one frame, or the blend, and writes it as a PNG; without choice the first scheme’s last frame',
  run: (line, terminal) => {
    const text = { type: 'string' } as const;
    const words = readWords(
      line,
      { out: text, width: text, samples: text, scheme: text, frame: text, blend: { type: 'boolean' } },
      usage,
    );
    if (words.isSet('blend') && words.isSet('frame'))
      throw new CommandError(`--frame or --blend, not both; usage: ${usage}`);
    const out = words.option('out');
    if (!out) throw new CommandError(`--out is missing; usage: ${usage}`);
    if (!out.toLowerCase().endsWith('.png'))
      throw new CommandError(`--out must end in .png, not "${out}"; usage: ${usage}`);
    const width = wholeOption(words, 'width', [16, 4096], 480, usage);
    const samples = wholeOption(words, 'samples', [1, 4096], 64, usage);
    const setup = loadSetup(words.file);
    const [scheme, { id }] = chosen(setup, words.option('scheme'), words.option('frame'));
    checkWritable(out);
    const world = buildWorld(setup, scheme);
    const frame = world.frames.find((each) => each.id === id) as WorldFrame;
    const size = sizeOf(world, width, samples);
    const blended = new Set(blendEntries(scheme).map((entry) => entry.frame.id));
    if (terminal.isWatched) terminal.tell(foretold(world, frame, words.isSet('blend') ? blended.size : 1, size));
    const { pixelsWide } = (scheme.camera ?? setup.camera).sensor;
    const png = words.isSet('blend')
      ? pngOf(traceBlend(world, scheme, pixelsWide, size), frame, size)
      : picturePng(world, frame, size);
    writeOutput(out, png);
  },
};
