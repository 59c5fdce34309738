import { cameraFeet } from '../readings/camera-feet.ts';
import { fromMiddle, nearestOnWay } from '../readings/hazard-ground.ts';
import { momentsOf } from '../readings/moments.ts';
import { onLevel } from '../readings/walk-ground.ts';
import type { PassKey } from '../readings/walk-lines.ts';
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

/** The camera, or whoever sets it off, within a hazard: the passes may be clear of it, the photographer is not. */
const atCamera = ({ scheme, world }: SchemeCase, hazard: Hazard): Told[] => {
  const [first] = scheme.frames;
  const limit = hazard.radiusMetres;
  const [feet, tripod] = [cameraFeet(world), world.view.position].map((at) => fromMiddle(hazard, onLevel(at))) as [
    number,
    number,
  ];
  const isStoodIn = feet < limit;
  if (!first || (!isStoodIn && tripod >= limit)) return [];
  const value = isStoodIn ? feet : tripod;
  const inside = `inside “${hazard.name}”, ${metres(limit - value)} m past its edge`;
  return [
    {
      code: 'terrain',
      severity: isStoodIn ? 'danger' : 'warning',
      frameId: first.id,
      message: isStoodIn
        ? `The camera: whoever stands behind it stands ${inside}. Put the camera elsewhere. ${scout}`
        : `The camera is put up ${inside}. Put it elsewhere. ${scout}`,
      value,
      limit,
    },
  ];
};

/** A walk leads through a hazard that it does not begin or end in: there is no way round. */
const crossing = ({ setup, scheme, walks }: SchemeCase): Told[] =>
  walks.flatMap(({ from, to, points, hazardIds }) => {
    // not from the camera to itself
    const at = (to ?? from) as PassKey;
    const nameOf = ({ frameId, passId }: PassKey) =>
      scheme.frames.find(({ id }) => id === frameId)?.passes.find(({ id }) => id === passId)?.name;
    const way = `from ${from ? `“${nameOf(from)}”` : 'the camera'} to ${to ? `“${nameOf(to)}”` : 'the camera'}`;
    return setup.hazards.flatMap((hazard): Told[] => {
      const limit = hazard.radiusMetres;
      const ends = [points[0], points.at(-1)];
      // who stands in it is told of that
      if (!hazardIds.includes(hazard.id) || ends.some((end) => end && fromMiddle(hazard, end) < limit)) return [];
      return [
        {
          code: 'terrain',
          severity: 'danger',
          // what leads from the camera or back to it is the round's, not the pass's
          ...(from && to ? { passId: at.passId } : {}),
          frameId: at.frameId,
          message: `${from && to ? `${nameOf(at)}: no` : 'No'} way was found ${way} but through “${hazard.name}”. ${from && to ? 'Ask a helper, put one lamp on a stand, or light it from the other side.' : 'Put the camera or the lamp elsewhere, ask a helper, or put the lamp on a stand by day.'} ${scout}`,
          value: nearestOnWay(hazard, points),
          limit,
        },
      ];
    });
  });

/** Somebody stands in a hazard, at a lamp or at the camera, or has to walk through one. */
export const terrain: SchemeRule = (schemeCase) => [
  ...schemeCase.setup.hazards.flatMap((hazard) => atCamera(schemeCase, hazard)),
  ...schemeCase.frames.flatMap(({ passes }) =>
    passes.flatMap((pass) => schemeCase.setup.hazards.flatMap((hazard) => standing(pass, hazard))),
  ),
  ...crossing(schemeCase),
];
