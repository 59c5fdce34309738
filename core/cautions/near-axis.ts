import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

/** The lamp stands too near the camera's axis: the picture goes flat. */
export const nearAxis: PassRule = ({ pass, reading }) => {
  const { danger, note } = limits.nearAxisDegrees;
  const value = reading.offAxisDegrees;
  if (value >= note) return null;
  const flat = value < danger;
  return {
    code: 'near-axis',
    severity: flat ? 'danger' : 'note',
    passId: pass.id,
    message: flat
      ? `${pass.name}: the lamp is ${value.toFixed(0)}° off the camera’s axis. It will look flat: shadows hide behind what throws them. Move it round to at least ${note}°; 60° to 120° shows form.`
      : `${pass.name}: the lamp is ${value.toFixed(0)}° off the camera’s axis. Form will be weak. Go past ${note}° if you want shadows.`,
    value,
    limit: flat ? danger : note,
  };
};
