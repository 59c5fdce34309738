import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';

/** How the marks of a pass are drawn: each has its colour, its dash and its way of hatching, so that none needs the others. */
export interface PassInk {
  readonly name: string;
  readonly colour: string;
  /** Stroke dashes in pixels. */
  readonly dash: string;
  readonly hatchDegrees: number;
}

const dashes = ['none', '9 4', '2 3', '10 3 2 3', '5 2', '14 3 2 3 2 3'];
const turns = [45, -45, 90, 0, 22, -22, 68, -68];

/** Inks of a scheme's passes by frame and pass: "frame/pass". */
export const passInks = (setup: Setup, { frames }: Scheme): ReadonlyMap<string, PassInk> => {
  const passes = frames.flatMap((frame) => frame.passes.map((pass) => ({ frame, pass })));
  return new Map(
    passes.map(({ frame, pass }, i) => {
      const lamp = setup.lamps.find(({ id }) => id === pass.lampId);
      const colour = cssColourOfLight(lamp?.temperatureKelvin ?? 5500, pass.gels, frame.whiteBalance);
      const dash = dashes[i % dashes.length] as string;
      return [
        `${frame.id}/${pass.id}`,
        { name: pass.name, colour, dash, hatchDegrees: turns[i % turns.length] as number },
      ];
    }),
  );
};
