import type { Pass } from '../setup/schema/setup.ts';

const short = (value: number): string => String(Number(value.toFixed(1)));

/** What is in front of a lamp, by name: "1/4 CTO", "1/2 CTO + cloth 2 stops", "none". Colour is told by words alone. */
export const gelWord = ({ gels, cloth, snootDegrees }: Pick<Pass, 'gels' | 'cloth' | 'snootDegrees'>): string => {
  const things = [
    ...gels.map(({ name }) => name),
    ...(cloth ? [cloth.stops > 0 ? `cloth ${short(cloth.stops)} stops` : 'cloth'] : []),
    ...(snootDegrees === null ? [] : [`snoot ${short(snootDegrees)}°`]),
  ];
  return things.join(' + ') || 'none';
};
