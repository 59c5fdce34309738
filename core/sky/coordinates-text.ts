import type { CoordinateAxis } from './coordinate-angle.ts';

/** Degrees to five places are within a metre of the ground, minutes to three within two. */
const degreePlaces = 5;
const minutePlaces = 3;

const letterOf = (axis: CoordinateAxis, isMinus: boolean): string =>
  axis === 'latitude' ? (isMinus ? 'S' : 'N') : isMinus ? 'W' : 'E';

/** "54.40000° N" of degrees, north and east positive. */
export const degreesText = (degrees: number, axis: CoordinateAxis): string => {
  const size = Math.abs(degrees).toFixed(degreePlaces);
  return `${size}° ${letterOf(axis, degrees < 0 && Number(size) > 0)}`;
};

/** "54° 24.000′ N" of degrees, north and east positive. Sixty minutes carry over. */
export const degreesMinutesText = (degrees: number, axis: CoordinateAxis): string => {
  const thousandths = Math.round(Math.abs(degrees) * 60 * 10 ** minutePlaces);
  const perDegree = 60 * 10 ** minutePlaces;
  const minutes = ((thousandths % perDegree) / 10 ** minutePlaces).toFixed(minutePlaces);
  const letter = letterOf(axis, degrees < 0 && thousandths > 0);
  return `${Math.floor(thousandths / perDegree)}° ${minutes.padStart(minutePlaces + 3, '0')}′ ${letter}`;
};

/** Both coordinates in one line, latitude first. */
export const coordinatesText = (
  latitudeDegrees: number,
  longitudeDegrees: number,
  form: 'degrees' | 'degrees-minutes',
): string => {
  const text = form === 'degrees' ? degreesText : degreesMinutesText;
  return `${text(latitudeDegrees, 'latitude')}, ${text(longitudeDegrees, 'longitude')}`;
};
