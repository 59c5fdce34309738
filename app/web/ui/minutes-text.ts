/** A time of the night's run: "0:07", "1:26", "12:00"; tenths only where asked for. */
export const minutesText = (seconds: number): string => {
  const whole = Math.round(Math.abs(seconds));
  return `${seconds < 0 && whole > 0 ? '−' : ''}${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
};
