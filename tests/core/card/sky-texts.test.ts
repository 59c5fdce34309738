import { describe, expect, it } from 'vitest';
import type { CardNight, CardSky } from '../../../core/card/field-card.ts';
import { darkTexts, moonTexts } from '../../../core/card/sky-texts.ts';

const dark = [{ from: '20:10', to: '05:30' }];
const plain: CardNight = {
  phase: 'waxing crescent',
  litShare: 0.25,
  moonAltitudeDegrees: 12.4,
  moonBearingDegrees: 225,
  moonrise: null,
  moonset: null,
  dark,
  darkMoonless: dark,
};

const skyWith = (night: Partial<CardNight> | null): CardSky => ({
  localTime: '2026-10-15T21:30',
  timeZone: 'Nowhere/At_all',
  latitudeDegrees: 50,
  longitudeDegrees: 0,
  isPictured: false,
  night: night && { ...plain, ...night },
});

describe('moonTexts', () => {
  const said = (night: Partial<CardNight>) => moonTexts(skyWith(night));

  it('says phase and share, then where the moon stands at the hour, then when it rises and sets', () => {
    expect(said({ moonrise: '13:05', moonset: '22:40' })).toEqual([
      'waxing crescent, 25 % lit',
      '21:30: 12° up at 225° SW',
      'rises 13:05, sets 22:40',
    ]);
    expect(said({ moonset: '22:40' })[2]).toBe('sets 22:40');
    expect(said({ moonrise: '02:15' })[2]).toBe('rises 02:15');
  });

  it('a moon that neither rises nor sets is up all night, or down all night', () => {
    expect(said({})[2]).toBe('does not set');
    expect(said({ moonAltitudeDegrees: -8 }).slice(1)).toEqual(['21:30: down', 'does not rise']);
  });

  it('calls a thin moon lit by under 1 %, and a new one by 0 %', () => {
    const lit = (litShare: number) => said({ litShare })[0];
    expect([0, 0.004, 0.006, 1].map(lit)).toEqual(
      ['0 %', 'under 1 %', '1 %', '100 %'].map((share) => `waxing crescent, ${share} lit`),
    );
  });
});

describe('darkTexts', () => {
  const said = (night: Partial<CardNight>) => darkTexts(skyWith(night));

  it('says the dark hours once where no moon shortens them', () => {
    expect(said({})).toEqual(['20:10 to 05:30']);
  });

  it('says what the moon leaves of them, in as many spans as there are', () => {
    const darkMoonless = [
      { from: '20:10', to: '21:00' },
      { from: '03:45', to: '05:30' },
    ];
    expect(said({ darkMoonless })).toEqual(['20:10 to 05:30', 'no moon 20:10 to 21:00, 03:45 to 05:30']);
    expect(said({ darkMoonless: [] })).toEqual(['20:10 to 05:30', 'the moon is up all the time']);
  });

  it('says that a light night of summer has none', () => {
    expect(said({ dark: [], darkMoonless: [] })).toEqual(['not in this night']);
  });
});

describe('the sky of a card in a time zone that this machine does not know', () => {
  it('is said to be unknown, moon and dark hours alike: no clock is guessed', () => {
    for (const texts of [moonTexts, darkTexts])
      expect(texts(skyWith(null))).toEqual(['not known: this machine has no clock for Nowhere/At_all']);
  });
});
