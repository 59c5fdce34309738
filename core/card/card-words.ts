import { feetText } from '../units/feet.ts';
import { markedText } from '../units/third-stops.ts';
import type { CardRow, CardStand } from './card-row.ts';
import type { CardFrame, CardSky, FieldCard } from './field-card.ts';

/** Numbers of the card as texts. Paper, terminal and phone use the same. */

type Lengths = FieldCard['lengths'];

/** Three figures at most, no tail of noughts. */
const figures = (value: number): string => String(Number(value.toPrecision(value < 1 ? 2 : 3)));

/** "6.0 m", "0.45 m", "80 m"; "19.7 ft" in feet. */
export const lengthText = (metres: number, lengths: Lengths): string => {
  if (lengths === 'feet') return feetText(metres);
  return `${metres.toFixed(metres < 1 ? 2 : metres < 20 ? 1 : 0)} m`;
};

/** A lens focused beyond this is set at its infinity mark: no ring is marked farther. Common practice, no published source. */
const infinityFromMetres = 500;

/** Where a lens is focused, or how far it is sharp: a length, or "infinity" for null and past all marks of a lens. */
export const focusText = (metres: number | null, lengths: Lengths): string =>
  metres === null || metres >= infinityFromMetres ? 'infinity' : lengthText(metres, lengths);

/** Whole paces, halves under three: "8", "1½"; "0" right at the mark. */
export const pacesText = (paces: number): string => {
  if (paces >= 2.75) return String(Math.round(paces));
  const halves = Math.round(paces * 2);
  const whole = Math.floor(halves / 2);
  return halves % 2 === 0 ? String(whole) : `${whole || ''}½`;
};

/** "right 105°", "left 90°", "6 o’clock is 0°", "behind 180°": round the mark from the camera. */
export const roundText = ({ roundDegrees }: Pick<CardStand, 'roundDegrees'>): string => {
  const whole = Math.round(Math.abs(roundDegrees));
  if (whole === 0 || whole === 180) return `${whole}°`;
  return `${roundDegrees > 0 ? 'right' : 'left'} ${whole}°`;
};

/** "full", "25 %", "0.5 %". */
export const levelText = (percent: number): string => (percent === 100 ? 'full' : `${figures(percent)} %`);

/** What to count: "8", "1.6"; "all" for a lamp that shines as long as the shutter is open. */
export const countText = ({ staysOn, countSeconds }: Pick<CardRow, 'staysOn' | 'countSeconds'>): string =>
  staysOn ? 'all' : figures(countSeconds);

/** When the lamp goes on after the shutter: "at 14 s"; "stays on" for one that shines as long as it is open. */
export const onText = ({ staysOn, onSeconds }: Pick<CardRow, 'staysOn' | 'onSeconds'>): string =>
  staysOn ? 'stays on' : `at ${figures(onSeconds)} s`;

/** "7.1", "15", "1/60", "800": camera numbers without their letters. */
export const apertureText = ({ aperture }: Pick<CardFrame, 'aperture'>): string =>
  markedText('aperture', aperture).slice(2);
export const shutterText = ({ seconds }: Pick<CardFrame, 'seconds'>): string =>
  markedText('seconds', seconds).replace(' s', '');

/** "4", "12.5": seconds of a walk or a stay, finer where they are short. */
export const secondsText = (seconds: number): string => seconds.toFixed(seconds < 10 ? 1 : 0);

/** "21 s · 13 s too late", "21 s from the camera · …": on foot to a pass; null where nobody walks there, or no way was found. */
export const walkText = (row: Pick<CardRow, 'walkSeconds' | 'isWalkFromCamera' | 'slackSeconds'>): string | null => {
  const { walkSeconds, isWalkFromCamera, slackSeconds } = row;
  if (walkSeconds === null || slackSeconds === null) return null;
  const took = `${secondsText(walkSeconds)} s${isWalkFromCamera ? ' from the camera' : ''}`;
  return `${took} · ${secondsText(Math.abs(slackSeconds))} s ${slackSeconds < 0 ? 'too late' : 'to spare'}`;
};

const winds = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;

/** "104° E": a true bearing in whole degrees with the nearest of eight winds. */
export const bearingText = (degrees: number): string => {
  const whole = Math.round(degrees) % 360;
  return `${whole}° ${winds[Math.round(whole / 45) % 8]}`;
};

const weekdays = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'] as const;
const months = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'] as const;

/** "Sat 10 Oct 2026" of a local time such as 2026-10-10T22:00. */
export const dateText = ({ localTime }: Pick<CardSky, 'localTime'>): string => {
  const day = new Date(`${localTime.slice(0, 10)}T00:00Z`);
  return `${weekdays[day.getUTCDay()]} ${day.getUTCDate()} ${months[day.getUTCMonth()]} ${localTime.slice(0, 4)}`;
};

/** "22:00". */
export const hourText = ({ localTime }: Pick<CardSky, 'localTime'>): string => localTime.slice(11, 16);

/** "52.40° N, 3.60° W". */
export const coordinatesShort = ({ latitudeDegrees, longitudeDegrees }: CardSky): string => {
  const one = (degrees: number, plus: string, minus: string) =>
    `${Math.abs(degrees).toFixed(2)}° ${degrees < -0.005 ? minus : plus}`;
  return `${one(latitudeDegrees, 'N', 'S')}, ${one(longitudeDegrees, 'E', 'W')}`;
};
