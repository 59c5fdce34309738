/** The nearest whole number of steps, without the tail that binary fractions leave. */
export const toStep = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(6)) + 0;
