import type { PhotometricFile } from '../../../core/photometry/lm63/photometric-file.ts';
import { maxBeamAngles, maxBeamValues, measuredBeam } from '../../../core/setup/schema/measured-beam.ts';
import { planesRound } from '../../../core/setup/schema/planes-round.ts';
import type { MeasuredBeam } from '../../../core/setup/schema/setup.ts';

/** A photometric file that was read well and still can't be a lamp's beam. The message is a sentence without its end. */
export class BeamRefused extends Error {}

const many = (count: number) => count.toLocaleString('en-GB');

const idFrom = (name: string): string => {
  const plain = name
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 40)
    .replace(/^-+|-+$/g, '');
  return plain || 'measured';
};

/**
 * A photometric file as the document keeps it: the name, the angles in degrees, the candelas to six figures, which keeps
 * setups small. Throws `BeamRefused` for what the document does not take.
 */
export const beamFromFile = ({ name, verticalDegrees, horizontalDegrees, candela }: PhotometricFile): MeasuredBeam => {
  for (const [way, { length }] of Object.entries({ vertical: verticalDegrees, horizontal: horizontalDegrees }))
    if (length > maxBeamAngles)
      throw new BeamRefused(`It has ${many(length)} ${way} angles; at most ${many(maxBeamAngles)} are taken`);
  const planes = planesRound(horizontalDegrees);
  if (planes > maxBeamAngles)
    throw new BeamRefused(
      `Mirrored round the circle it has ${many(planes)} planes; at most ${many(maxBeamAngles)} are taken`,
    );
  const values = verticalDegrees.length * horizontalDegrees.length;
  if (values > maxBeamValues)
    throw new BeamRefused(`It has ${many(values)} values; at most ${many(maxBeamValues)} are taken`);
  if ((verticalDegrees[0] as number) >= 90)
    throw new BeamRefused('Its vertical angles begin at 90°: all of its light would go backward, away from the aim');
  const result = measuredBeam.safeParse({
    id: idFrom(name),
    name,
    verticalDegrees: [...verticalDegrees],
    horizontalDegrees: [...horizontalDegrees],
    candela: candela.map((plane) => plane.map((value) => Number(value.toPrecision(6)))),
  });
  if (result.success) return result.data;
  const [issue] = result.error.issues;
  throw new BeamRefused(`${issue?.path[0] === 'candela' ? 'Its candelas' : 'It'} ${issue?.message ?? 'does not fit'}`);
};
