import type { PassRule } from './caution.ts';

/** The lens sees the emitter. */
export const lampInFrame: PassRule = ({ pass, reading }) => {
  const { seenShare, shines } = reading.lens;
  if (seenShare === 0) return null;
  const share = `${Math.round(100 * seenShare)} %`;
  return {
    code: 'lamp-in-frame',
    severity: shines ? 'danger' : 'warning',
    passId: pass.id,
    message: shines
      ? `${pass.name}: the lens sees ${share} of the bare lamp, and it shines this way. It will burn a spot or a streak. Hide it behind something, move it out of the frame, or turn it away.`
      : `${pass.name}: ${share} of the lamp is inside the frame, though it points away from the lens. Your hand or legs may show. Hide it or step out of the frame.`,
    value: seenShare,
    limit: 0,
  };
};
