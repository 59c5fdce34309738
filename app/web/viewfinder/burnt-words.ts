import type { FrameReport } from '../../../core/cautions/setup-report.ts';
import { percentText } from '../ui/words.ts';

interface BurntFrame {
  readonly name: string;
  readonly clipped: FrameReport['clipped'];
}

const channels = ['red', 'green', 'blue'] as const;

const channelWords = (clipped: FrameReport['clipped']): string =>
  channels
    .filter((channel) => clipped[channel] > 0)
    .sort((a, b) => clipped[b] - clipped[a])
    .map((channel) => `${channel} ${percentText(clipped[channel])}`)
    .join(', ');

/** Which channels are full and over how much of the picture, the worst first; frames are named where several are seen. */
export const burntWords = (frames: readonly BurntFrame[]): string => {
  const burnt = frames.flatMap(({ name, clipped }) => {
    const words = channelWords(clipped);
    return words ? [frames.length > 1 ? ` in ${name}: ${words}` : `: ${words}`] : [];
  });
  return burnt.length > 0 ? `Burnt${burnt.join(';')}` : 'nothing burnt';
};
