import { exactIso, stepThird } from '../units/third-stops.ts';

/** Whether the level can be had at all, and what to do. */
export interface CountAdvice {
  readonly reachable: boolean;
  /** Out of reach by so many stops: positive too bright, negative too dark; null within reach. */
  readonly missStops: number | null;
  readonly advice: readonly string[];
}

interface TooBright {
  /** Over the wanted level, with the lamp at its lowest and the shortest count. */
  readonly stops: number;
  readonly lowestLevelPercent: number;
  readonly shortestSeconds: number;
  readonly staysLit: boolean;
  readonly distanceMetres: number;
  readonly standBackMetres: number | null;
  /** That would be right. */
  readonly iso: number;
}

interface TooDark {
  /** Under the wanted level, with the lamp at full and lit for the whole frame. */
  readonly stops: number;
  readonly frameSeconds: number;
  readonly neededSeconds: number;
  readonly comeToMetres: number | null;
  readonly iso: number;
}

const figures = (value: number): string => String(Number(value.toPrecision(2)));
/** Fine enough that what is left off changes the light by less than a twentieth of a stop. */
const metres = (value: number): string => value.toFixed(value < 3 ? 2 : value < 30 ? 1 : 0);

/** Marked speeds that cameras have; below and above them the aperture must help. */
const isoRange = [50, 51200] as const;

/** The marked ISO nearest to a speed that is not past it: at or under it to lower, at or over it to raise. Markings are rounded. */
const markedIso = (iso: number, word: 'Lower' | 'Raise'): number => {
  const [beyond, back] = word === 'Lower' ? ([1.05, -1] as const) : ([0.95, 1] as const);
  const marked = stepThird('iso', iso * beyond, back);
  const isPast = word === 'Lower' ? exactIso(marked) > iso * 1.002 : exactIso(marked) < iso * 0.998;
  return isPast ? stepThird('iso', marked, back) : marked;
};

/** Ways out, each after the first begun with "Or". */
const choices = (ways: readonly string[]): string[] =>
  ways.map((way, i) => (i === 0 ? way : `Or ${way.charAt(0).toLowerCase()}${way.slice(1)}`));

const isoAdvice = (iso: number, word: 'Lower' | 'Raise'): string[] =>
  iso >= isoRange[0] && iso <= isoRange[1] ? [`${word} the ISO to ${markedIso(iso, word)}.`] : [];

/** Nobody keeps a shutter open for longer, to paint: common practice, no published source. */
const longestSeconds = 900;

/** The lamp at its lowest, for the shortest count, is still too bright: what would do it. */
export const tooBrightAtLowest = (case_: TooBright): CountAdvice => {
  const { stops, lowestLevelPercent, shortestSeconds, staysLit, distanceMetres, standBackMetres, iso } = case_;
  const count = staysLit ? 'lit for the whole frame' : `with a count of ${figures(shortestSeconds)}`;
  const lowest =
    lowestLevelPercent < 100
      ? `At its lowest level, ${figures(lowestLevelPercent)} %, and`
      : 'It has no lower level, and';
  return {
    reachable: false,
    missStops: stops,
    advice: [
      `${lowest} ${count}, it is still ${stops.toFixed(1)} stops too bright at ${metres(distanceMetres)} m, level.`,
      ...choices([
        ...(standBackMetres === null ? [] : [`Step back to ${metres(standBackMetres)} m.`]),
        `Hang ${stops.toFixed(1)} stops of cloth or ND over it.`,
        ...isoAdvice(iso, 'Lower'),
        'Bounce it off a hand, a wall or the ground beside you.',
      ]),
    ],
  };
};

/** The lamp at full, lit for the whole frame, is still too dark: what would do it. */
export const tooDarkAtFull = ({ stops, frameSeconds, neededSeconds, comeToMetres, iso }: TooDark): CountAdvice => ({
  reachable: false,
  missStops: -stops,
  advice: [
    `At full level, lit for all ${figures(frameSeconds)} s, it is still ${stops.toFixed(1)} stops too dark.`,
    ...choices([
      ...(comeToMetres === null ? [] : [`Come to ${metres(comeToMetres)} m.`]),
      ...isoAdvice(iso, 'Raise'),
      ...(neededSeconds <= longestSeconds ? [`Keep the shutter open for ${figures(neededSeconds)} s.`] : []),
    ]),
  ],
});
