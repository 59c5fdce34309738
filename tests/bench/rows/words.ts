import type { Size } from '../../../app/web/render/layer-store.ts';

export type Sized<T> = T & Size;

export const digits = (value: number): string =>
  value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2);
export const time = (ms: number): string => (ms >= 1000 ? `${digits(ms / 1000)} s` : `${digits(ms)} ms`);
export const listed = <T>(values: readonly T[], text: (value: T) => string): string => values.map(text).join(' · ');
export const sizeOf = ({ width, height }: Size): string => `${width} × ${height}`;
