import { fromMiddle, nearestOnWay } from '../readings/hazard-ground.ts';
import { momentsOf } from '../readings/moments.ts';
import { onLevel } from '../readings/walk-ground.ts';
import type { Hazard } from '../setup/schema/setup.ts';
import { feetOf } from '../world/holder.ts';
import type { Caution, ReadPass, SchemeCase, SchemeRule } from './caution.ts';

type Told = Caution & { readonly frameId: string };

const metres = (value: number): string => value.toFixed(value < 10 ? 1 : 0);
const scout = 'Look at the ground by day with someone who knows it; local knowledge decides, not this page.';

/** A pass where somebody stands, or puts up a stand, within a hazard. */
const standing = ({ world, frame, pass, light }: ReadPass, hazard: Hazard): Told[] => {
  const isHeld = pass.held === 'hand';
  const places = momentsOf(light).map((moment) => onLevel(isHeld ? feetOf(world.stage, moment) : moment.position));
  const value = nearestOnWay(hazard, places);
  const limit = hazard.radiusMetres;
  if (value >= limit) return [];
  const inside = `inside “${hazard.name}”, ${metres(limit - value)} m past its edge`;
  return [
    {
      code: 'terrain',
      severity: isHeld ? 'danger' : 'warning',
      passId: pass.id,
      frameId: frame.id,
      message: isHeld
        ? `${pass.name}: whoever holds the lamp stands ${inside}. Stand elsewhere, or light it from farther off. ${scout}`
        : `${pass.name}: the stand is put up ${inside}. Put it elsewhere. ${scout}`,
      value,
      limit,
    },
  ];
};

/** The walk to a pass leads through a hazard that it does not begin or end in: there is no way round. */
const crossing = ({ frame, pass, walk }: ReadPass, hazard: Hazard): Told[] => {
  if (!walk?.hazardIds.includes(hazard.id)) return [];
  const ends = [walk.points[0], walk.points.at(-1)];
  const limit = hazard.radiusMetres;
  if (ends.some((end) => end && fromMiddle(hazard, end) < limit)) return [];
  return [
    {
      code: 'terrain',
      severity: 'danger',
      passId: pass.id,
      frameId: frame.id,
      message: `${pass.name}: no way was found from “${walk.fromName}” but through “${hazard.name}”. Ask a helper, put one lamp on a stand, or light it from the other side. ${scout}`,
      value: nearestOnWay(hazard, walk.points),
      limit,
    },
  ];
};

/** Somebody stands in a hazard, or has to walk through one. */
export const terrain: SchemeRule = ({ setup, frames }: SchemeCase) =>
  frames.flatMap(({ passes }) =>
    passes.flatMap((pass) =>
      setup.hazards.flatMap((hazard) => {
        const stood = standing(pass, hazard);
        return stood.length > 0 ? stood : crossing(pass, hazard);
      }),
    ),
  );
