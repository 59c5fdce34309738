import { eyeLux, eyesOf } from '../readings/eye-light.ts';
import type { FrameCase, ReadPass, SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

interface Dazzle {
  readonly of: ReadPass;
  readonly frameId: string;
  readonly lux: number;
  /** Who stands in the beam; null where nobody is known to. */
  readonly who: string | null;
}

const groups =
  'IEC 62471 sorts lamps into risk groups: ask the maker or someone qualified. No distance is called safe here.';

/** The brightest of the passes, by what each puts into eyes. */
const brightest = (frames: readonly FrameCase[], luxOf: (of: ReadPass) => number, who: string | null): Dazzle | null =>
  frames
    .flatMap(({ frame, passes }) => passes.map((of) => ({ of, frameId: frame.id, lux: luxOf(of), who })))
    .reduce<Dazzle | null>((best, each) => (best && best.lux >= each.lux ? best : each), null);

/** A strong beam with a person in it, or one that dazzles whoever comes near. Told once, of the worst pass. */
export const eye: SchemeRule = ({ setup, world: { stage }, frames }) => {
  const people = stage.subjects.filter(({ id }) =>
    setup.subjects.some((subject) => subject.id === id && subject.kit?.name === 'person'),
  );
  const found = [
    ...people.map(({ name, points }) => {
      const eyes = eyesOf(points);
      return brightest(frames, ({ light }) => eyeLux(stage, light, eyes), name);
    }),
    brightest(frames, ({ reading }) => reading.beam.peakCandela / limits.passerByMetres ** 2, null),
  ].find((each) => each !== null && each.lux > limits.eyeLux);
  if (!found) return [];
  const { of, frameId, lux: value, who } = found;
  const candela = Number(of.reading.beam.peakCandela.toPrecision(2));
  const what = who
    ? `“${who}” stands in its beam, with ${Math.round(value)} lx at the eyes. They must not look into it: let them close their eyes or turn away, or make it weaker`
    : `a strong beam, ${candela} cd. Nobody should look into it, nor have it turned on them`;
  return [
    {
      code: 'eye',
      severity: 'note',
      passId: of.pass.id,
      frameId,
      message: `${of.pass.name}: ${what}. ${groups}`,
      value,
      limit: limits.eyeLux,
    },
  ];
};
