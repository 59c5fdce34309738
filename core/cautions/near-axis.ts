import { lampDirection } from '../readings/direction.ts';
import { momentsOf } from '../readings/moments.ts';
import { degreesFromRadians } from '../units/angle.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** The lamp stands, or comes, too near the camera's axis: the picture goes flat. */
export const nearAxis: PassRule = ({ world, pass, light }) => {
  const { danger, note } = limits.nearAxisDegrees;
  const angles = momentsOf(light).map(({ position, aim }) =>
    degreesFromRadians(lampDirection(aim, world.view.position, position).offAxisRadians),
  );
  const value = Math.min(...angles);
  if (value >= note) return null;
  const flat = value < danger;
  const where = `${pass.name}: the lamp ${angles.length > 1 ? 'comes within' : 'is'} ${value.toFixed(0)}° off the camera’s axis.`;
  return {
    code: 'near-axis',
    severity: flat ? 'danger' : 'note',
    passId: pass.id,
    message: flat
      ? `${where} It will look flat: shadows hide behind what throws them. Move it round to at least ${note}°; 60° to 120° shows form.`
      : `${where} Form will be weak. Go past ${note}° if you want shadows.`,
    value,
    limit: flat ? danger : note,
  };
};
