import type { BagLamp } from '../../../../core/bag/bag-file.ts';
import { isSameBeam } from '../../../../core/bag/same-beam.ts';
import type { Lamp, Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { maxMeasuredBeams } from './lamp-edits.ts';
import { freshId } from './within.ts';

/** A lamp from the bag made to fit a setup: its beam is one of the setup's, found or added. */
const fitted = (setup: Setup, { lamp, beam }: BagLamp, id: string): { readonly setup: Setup; readonly lamp: Lamp } => {
  if (!beam || !('beam' in lamp) || lamp.beam.shape !== 'measured') return { setup, lamp: { ...lamp, id } };
  const known = setup.measuredBeams.find((each) => isSameBeam(each, beam));
  if (!known && setup.measuredBeams.length >= maxMeasuredBeams)
    throw new EditRefused(`The setup has ${maxMeasuredBeams} measured beams, as many as it takes.`);
  const own = known ?? { ...beam, id: freshId(setup.measuredBeams, beam.id) };
  return {
    setup: known ? setup : { ...setup, measuredBeams: [...setup.measuredBeams, own] },
    lamp: { ...lamp, id, beam: { ...lamp.beam, beamId: own.id } } as Lamp,
  };
};

/** A copy of a lamp of the bag put into the setup. */
export const addLampFromBag = (setup: Setup, bagLamp: BagLamp): { setup: Setup; lampId: string } => {
  const lampId = freshId(setup.lamps, bagLamp.lamp.id);
  const made = fitted(setup, bagLamp, lampId);
  return { setup: { ...made.setup, lamps: [...made.setup.lamps, made.lamp] }, lampId };
};

/** A lamp of the setup made as the bag has it. */
export const takeLampFromBag = (setup: Setup, lampId: string, bagLamp: BagLamp): Setup => {
  const made = fitted(setup, bagLamp, lampId);
  const lamps = made.setup.lamps.map((each) => (each.id === lampId ? made.lamp : each));
  const used = new Set(
    lamps.flatMap((each) => ('beam' in each && each.beam.shape === 'measured' ? [each.beam.beamId] : [])),
  );
  return { ...made.setup, lamps, measuredBeams: made.setup.measuredBeams.filter(({ id }) => used.has(id)) };
};
