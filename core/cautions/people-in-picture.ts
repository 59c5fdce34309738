import { peopleReading } from '../readings/people-reading.ts';
import type { FrameCase, SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

/** Passes whose lamps are held, as a list of names. */
const heldNames = ({ passes }: FrameCase): string =>
  passes
    .filter(({ pass }) => pass.held === 'hand')
    .map(({ pass }) => `“${pass.name}”`)
    .join(', ');

/**
 * Those who hold the lamps of a frame show in it, by whatever way: lit by their own lamp, before something lit, or as a
 * shadow. Said of the frame, unless one of its passes has been told of it already.
 */
export const peopleInPicture: SchemeRule = ({ frames }) =>
  frames.flatMap((each) => {
    const people = peopleReading(each.picture, limits.tooDarkStops);
    const limit = limits.peopleShare;
    const isTold = each.passes.some(({ cautions }) => cautions.some(({ code }) => code === 'person-in-frame'));
    if (!people || isTold || people.changedShare <= limit) return [];
    const [share, darker] = [people.changedShare, people.darkerShare].map((part) => Math.round(1000 * part) / 10);
    return [
      {
        code: 'person-in-frame',
        severity: 'warning' as const,
        frameId: each.frame.id,
        message: `${each.frame.name}: whoever holds ${heldNames(each)}, or their shadow, changes ${share} % of the picture by half a stop or more, ${darker} % of that darker. Stand where something hides you, step out of the frame, keep your body out of the lamp’s light, or put the lamp on a stand.`,
        value: people.changedShare,
        limit,
      },
    ];
  });
