import { z } from 'zod';
import { errorFromIssues } from '../setup/field-error.ts';
import { parseJson } from '../setup/parse-json.ts';
import { lamp } from '../setup/schema/lamp.ts';
import { measuredBeam } from '../setup/schema/measured-beam.ts';
import type { Lamp, MeasuredBeam } from '../setup/schema/setup.ts';
import { SetupError } from '../setup/setup-error.ts';
import { maxSetupBytes } from '../setup/setup-size.ts';
import { maxBagLamps } from './bag-size.ts';
import { isSameBeam } from './same-beam.ts';

/** A lamp of the user's own, with the beam that it was measured to have. */
export interface BagLamp {
  readonly lamp: Lamp;
  readonly beam: MeasuredBeam | null;
}

/** Version of bag files that is written, and the only one there is. */
export const bagVersion = 1;

const bagSchema = z.strictObject({
  format: z.literal('lampfall-bag', { error: 'this is not a bag of lamps; expected "lampfall-bag" here' }),
  version: z.literal(bagVersion, { error: `must be ${bagVersion}; this bag is of another version of Lampfall` }),
  lamps: z.array(lamp).max(maxBagLamps, `must be at most ${maxBagLamps}`),
  measuredBeams: z.array(measuredBeam).max(maxBagLamps, `must be at most ${maxBagLamps}`).default([]),
});

const beamIdOf = (own: Lamp): string | null =>
  'beam' in own && own.beam.shape === 'measured' ? own.beam.beamId : null;

const checkIds = (list: readonly { readonly id: string }[], path: string): void => {
  const seen = new Set<string>();
  list.forEach(({ id }, i) => {
    if (seen.has(id)) throw new SetupError('reference', `${path}[${i}].id`, `"${id}" is there twice`);
    seen.add(id);
  });
};

/**
 * Reads a bag of lamps from JSON text: size, syntax, version, fields, references, in that order.
 *
 * @returns the lamps in order, each with its measured beam
 * @throws SetupError naming the line or field and what was expected; nothing else
 */
export const parseBag = (text: string): BagLamp[] => {
  if (text.length > maxSetupBytes)
    throw new SetupError('size', '', `the file has over ${maxSetupBytes / 1e6} MB, the most that is read`);
  const value = parseJson(text.replace(/^\ufeff/, ''));
  const result = bagSchema.safeParse(value);
  if (!result.success) throw errorFromIssues(value, result.error.issues);
  const { lamps, measuredBeams } = result.data;
  checkIds(lamps, 'lamps');
  checkIds(measuredBeams, 'measuredBeams');
  return lamps.map((own, i) => {
    const beamId = beamIdOf(own);
    const beam = measuredBeams.find(({ id }) => id === beamId) ?? null;
    if (beamId !== null && !beam)
      throw new SetupError('reference', `lamps[${i}].beam.beamId`, `no measured beam has the id "${beamId}"`);
    if (own.output.from === 'measured' && beamId === null)
      throw new SetupError('reference', `lamps[${i}].output`, 'must not be that of a measured beam: the lamp has none');
    return { lamp: own, beam };
  });
};

/** A bag as text: ids made unique, a beam that several lamps share written once. `parseBag` gives the same lamps back. */
export const formatBag = (bag: readonly BagLamp[]): string => {
  const beams: MeasuredBeam[] = [];
  const placed = (beam: MeasuredBeam): string => {
    const known = beams.find((each) => isSameBeam(each, beam));
    if (known) return known.id;
    const id = `beam-${beams.length + 1}`;
    beams.push({ ...beam, id });
    return id;
  };
  const lamps = bag.map(({ lamp: own, beam }, i) => {
    const id = `lamp-${i + 1}`;
    if (!beam || beamIdOf(own) === null || !('beam' in own)) return { ...own, id };
    return { ...own, id, beam: { ...own.beam, beamId: placed(beam) } };
  });
  return `${JSON.stringify({ format: 'lampfall-bag', version: bagVersion, lamps, measuredBeams: beams }, null, 2)}\n`;
};
