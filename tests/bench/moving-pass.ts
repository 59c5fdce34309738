import type { Convergence } from './page/moving-pass.ts';

export const movingPassLines = (found: readonly Convergence[]): string => {
  const [still] = found;
  const lines = found.map(({ name, samples, errors, sampleMs }) => {
    const ratio = samples && still?.samples ? ` = ${(samples / still.samples).toFixed(2)} x` : '';
    const first = (100 * (errors[0]?.[1] ?? 0)).toFixed(1);
    const time = still ? ` · ${(sampleMs / still.sampleMs).toFixed(2)} x the time of a sample` : '';
    return `  ${name.padEnd(10)} ${samples ?? 'more than 512'} samples${ratio}${time} · first sample ${first} % off`;
  });
  return ['Moving pass, 16 waypoints: samples to 2 % RMS of 4,096 (bar: at most 2 x standing)', ...lines].join('\n');
};
