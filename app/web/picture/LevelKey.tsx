import { differenceBands, levelBands, type StopsBands } from '../render/stops-bands.ts';
import { bandTexts } from './band-texts.ts';

interface LevelKeyProps {
  /** Which map it explains: levels from mid-grey, or how much brighter the first of two pictures is. */
  readonly of: 'levels' | 'difference';
  /** What the numbers count from, in words. */
  readonly words: string;
}

const maps: Readonly<Record<LevelKeyProps['of'], StopsBands>> = { levels: levelBands, difference: differenceBands };

/** The bands of a map of stops with their numbers; darker differences are hatched as in the map. */
export const LevelKey = ({ of, words }: LevelKeyProps) => {
  const { first, colours } = maps[of];
  const texts = bandTexts(maps[of]);
  return (
    <div className="level-key" role="group" aria-label="What the bands mean">
      <ol>
        {colours.map((colour, i) => (
          <li key={colour} className={of === 'difference' && first + i < 0 ? 'level-hatched' : undefined}>
            <i style={{ backgroundColor: colour }} aria-hidden="true" />
            {texts[i]}
          </li>
        ))}
      </ol>
      <span className="quiet">{words}</span>
    </div>
  );
};
