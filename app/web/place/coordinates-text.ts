import type { Setup } from '../../../core/setup/schema/setup.ts';
import { coordinatesText } from '../../../core/sky/coordinates-text.ts';

type Coordinates = Pick<Setup['place'], 'latitudeDegrees' | 'longitudeDegrees'>;

/** Short, for a strip: "54.40° N, 2.60° W". */
export const shortCoordinates = ({ latitudeDegrees, longitudeDegrees }: Coordinates): string => {
  const one = (degrees: number, plus: string, minus: string) =>
    `${Math.abs(degrees).toFixed(2)}° ${degrees < -0.005 ? minus : plus}`;
  return `${one(latitudeDegrees, 'N', 'S')}, ${one(longitudeDegrees, 'E', 'W')}`;
};

/** Whole, for the field that they are typed in. */
export const wholeCoordinates = ({ latitudeDegrees, longitudeDegrees }: Coordinates): string =>
  coordinatesText(latitudeDegrees, longitudeDegrees, 'degrees');
