import type { Vec3 } from '../../geometry/vec.ts';
import type { PartDraft } from '../kit.ts';
import { placementAlong } from './frame.ts';

type Finish = PartDraft['finish'];

/** A round rod from one place to another, radii in metres at its start and end. */
export const rod = (
  name: string,
  from: Vec3,
  to: Vec3,
  radii: readonly [start: number, end: number],
  { sides = 12, finish }: { readonly sides?: number; readonly finish?: Finish } = {},
): PartDraft => {
  const { lengthMetres, ...placement } = placementAlong(from, to);
  const [radiusMetres, topRadiusMetres] = radii;
  return {
    kind: 'cylinder',
    name,
    ...placement,
    radiusMetres,
    ...(topRadiusMetres === radiusMetres ? {} : { topRadiusMetres }),
    heightMetres: lengthMetres,
    sides,
    ...(finish ? { finish } : {}),
  };
};

/** A squared timber from one place to another: `across` is its level side, `deep` the other, metres. */
export const beam = (
  name: string,
  from: Vec3,
  to: Vec3,
  [across, deep]: readonly [across: number, deep: number],
): PartDraft => {
  const { lengthMetres, ...placement } = placementAlong(from, to);
  return {
    kind: 'box',
    name,
    ...placement,
    widthMetres: across,
    depthMetres: deep,
    heightMetres: lengthMetres,
  };
};
