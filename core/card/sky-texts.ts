import { bearingText, hourText } from './card-words.ts';
import type { CardSky, ClockSpan } from './field-card.ts';

const litText = (share: number): string =>
  share > 0 && share < 0.005 ? 'under 1 % lit' : `${Math.round(100 * share)} % lit`;

const spansText = (spans: readonly ClockSpan[]): string => spans.map(({ from, to }) => `${from} to ${to}`).join(', ');

const unknownZone = (sky: CardSky): string => `not known: this machine has no clock for ${sky.timeZone}`;

/** The moon of the night: phase; where it stands at the hour; when it rises and sets. */
export const moonTexts = (sky: CardSky): string[] => {
  const { night } = sky;
  if (!night) return [unknownZone(sky)];
  const degrees = Math.round(night.moonAltitudeDegrees);
  const stands = degrees > 0 ? `${degrees}° up at ${bearingText(night.moonBearingDegrees)}` : 'down';
  const turns = [
    ...(night.moonrise ? [`rises ${night.moonrise}`] : []),
    ...(night.moonset ? [`sets ${night.moonset}`] : []),
  ];
  return [
    `${night.phase}, ${litText(night.litShare)}`,
    `${hourText(sky)}: ${stands}`,
    turns.length > 0 ? turns.join(', ') : degrees > 0 ? 'does not set' : 'does not rise',
  ];
};

/** When it is dark: sun 18° down; then without the moon, where that is less. */
export const darkTexts = (sky: CardSky): string[] => {
  const { night } = sky;
  if (!night) return [unknownZone(sky)];
  if (night.dark.length === 0) return ['not in this night'];
  const dark = spansText(night.dark);
  const moonless = spansText(night.darkMoonless);
  return [
    dark,
    ...(moonless === dark ? [] : [moonless === '' ? 'the moon is up all the time' : `no moon ${moonless}`]),
  ];
};
