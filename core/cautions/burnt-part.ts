import type { ClippedReading } from '../readings/clipped-reading.ts';
import type { SchemeRule } from './caution.ts';
import { channelWords } from './exposure.ts';
import { limits } from './limits.ts';

/** Where one of these is said of a pass, it says why the frame burns already. */
const saidAlready = ['burnt', 'hot-spot', 'lamp-in-frame'];

const fullChannels = (clipped: ClippedReading, limit: number): (keyof ClippedReading)[] =>
  (['red', 'green', 'blue'] as const).filter((channel) => clipped[channel] > limit);

/** Part of the picture burns though no target of a pass does: something nearer or paler than what was aimed at. */
export const burntPart: SchemeRule = ({ world, frames }) =>
  frames.flatMap(({ frame, passes, clipped, burnt }) => {
    const { subject, ground } = limits.burntShare;
    const channels = fullChannels(clipped, burnt?.subjectId ? subject : ground);
    const pass = passes.find(({ pass: { id } }) => id === burnt?.passId)?.pass;
    const isSaid = passes.some(({ cautions }) => cautions.some(({ code }) => saidAlready.includes(code)));
    if (channels.length === 0 || !burnt || !pass || isSaid) return [];
    const share = Math.max(clipped.red, clipped.green, clipped.blue);
    const name = world.stage.subjects.find(({ id }) => id === burnt.subjectId)?.name;
    const over = burnt.stops - limits.burntStops;
    return [
      {
        code: 'burnt',
        severity: 'warning' as const,
        passId: pass.id,
        frameId: frame.id,
        message: `${pass.name}: ${channelWords(channels)} ${channels.length > 1 ? 'burn' : 'burns'} on ${name ? `“${name}”` : 'the ground'}, over ${(100 * share).toFixed(1)} % of the picture and by up to ${over.toFixed(1)} stops. Count shorter, turn the lamp down, or keep its beam off that part.`,
        value: burnt.stops,
        limit: limits.burntStops,
      },
    ];
  });
