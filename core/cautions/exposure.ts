import { distance } from '../geometry/vec.ts';
import { middleMoment } from '../readings/moments.ts';
import { targetSurface } from '../readings/target-reading.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

const times = (stops: number) => {
  const factor = 2 ** stops;
  return factor < 10 ? factor.toFixed(1) : factor.toFixed(0);
};

/** The pass alone saturates the sensor at its target. */
export const burnt: PassRule = ({ world, pass, light, reading }) => {
  const value = reading.target?.stops ?? null;
  if (value === null || value <= limits.burntStops) return null;
  const { position, aim } = middleMoment(light);
  const surface = targetSurface(world.stage, world.view.position, aim);
  const back = distance(position, surface?.position ?? aim) * 2 ** (value / 2);
  return {
    code: 'burnt',
    severity: 'danger',
    passId: pass.id,
    message: `${pass.name}: ${value.toFixed(1)} stops over mid-grey at the target; the sensor is full at ${limits.burntStops.toFixed(1)}. For mid-grey divide the count by ${times(value)}, or step back to about ${back.toFixed(0)} m, or lower the level or ISO by ${value.toFixed(1)} stops.`,
    value,
    limit: limits.burntStops,
  };
};

/** The pass gives its target too little light to matter, or none. */
export const tooDark: PassRule = ({ pass, reading }) => {
  if (!reading.target) return null;
  const { stops } = reading.target;
  if (stops === null)
    return {
      code: 'too-dark',
      severity: 'note',
      passId: pass.id,
      message: `${pass.name}: no light of this pass reaches the surface that you see at its aim. That is right for a rim; else something stands between, or the lamp is behind the surface.`,
      limit: limits.tooDarkStops,
    };
  if (stops >= limits.tooDarkStops) return null;
  const misses = stops < limits.missesStops;
  return {
    code: 'too-dark',
    severity: 'warning',
    passId: pass.id,
    message: misses
      ? `${pass.name}: ${(-stops).toFixed(0)} stops under mid-grey at the target: hardly any of this light lands there. Aim it again.`
      : `${pass.name}: ${(-stops).toFixed(1)} stops under mid-grey at the target. For night level (1.5 under) multiply the count by ${times(-stops - 1.5)}, or come closer, or raise the level or ISO.`,
    value: stops,
    limit: limits.tooDarkStops,
  };
};
