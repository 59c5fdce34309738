import { describe, expect, it } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, errorOf, expectError, type Loose } from './good-setup.ts';

const goodRun = {
  at: '2026-10-12T22:41:07',
  frameId: 'land',
  frameName: 'Land',
  passId: 'key',
  passName: 'Key',
  seconds: 6,
};
const goodPhoto = { name: 'test 12.jpg' };
const goodNight = {
  id: 'first',
  startedAt: '2026-10-12T22:40',
  schemeId: 'gone-since',
  schemeName: 'Side',
  runs: [goodRun],
  photos: [goodPhoto],
};
const withNights = (nights: unknown) => (s: Loose) => {
  s.nights = nights;
};
const withNight = (fields: object) => withNights([{ ...goodNight, ...fields }]);
const withRun = (fields: object) => withNight({ runs: [{ ...goodRun, ...fields }] });
const withPhoto = (fields: object) => withNight({ photos: [{ ...goodPhoto, ...fields }] });
const withShot = (fields: object) => (s: Loose) => {
  s.lamps[0].testShots = [{ stops: -0.8, uncertaintyStops: 0.3, ...fields }];
};
const withCard = (card: unknown) => (s: Loose) => {
  s.card = card;
};

const cases: readonly (readonly [string, (setup: Loose) => void, string, string])[] = [
  [
    '61 nights',
    withNights(Array.from({ length: 61 }, (_, i) => ({ ...goodNight, id: `n${i}` }))),
    'nights',
    'at most 60',
  ],
  ['a night without a beginning', withNight({ startedAt: undefined }), 'nights[0].startedAt', 'a date and time'],
  ['a night on 30 February', withNight({ startedAt: '2026-02-30T22:00' }), 'nights[0].startedAt', 'that exist'],
  ['a note that is too long', withNight({ note: 'x'.repeat(2001) }), 'nights[0].note', 'at most 2000 characters'],
  ['401 passes in a night', withNight({ runs: Array(401).fill(goodRun) }), 'nights[0].runs', 'at most 400'],
  ['a count below nought', withRun({ seconds: -1 }), 'nights[0].runs[0].seconds', 'at least 0 seconds'],
  ['half a stroke', withRun({ strokes: 0.5 }), 'nights[0].runs[0].strokes', 'at least 1'],
  ['an unknown verdict', withRun({ verdict: 'fine' }), 'nights[0].runs[0].verdict', 'must be one of "good"'],
  ['a pass moved 13 hours', withRun({ hoursMoved: 13 }), 'nights[0].runs[0].hoursMoved', 'at most 12'],
  ['a photo without a name', withPhoto({ name: '' }), 'nights[0].photos[0].name', 'must not be empty'],
  ['a photo at ISO 0', withPhoto({ iso: 0 }), 'nights[0].photos[0].iso', 'at least 1'],
  ['two nights of one id', withNights([goodNight, goodNight]), 'nights[1].id', 'is used twice'],
  ['a test shot without stops', withShot({ stops: undefined }), 'lamps[0].testShots[0].stops', 'a number in stops'],
  ['a test shot of 21 stops', withShot({ stops: 21 }), 'lamps[0].testShots[0].stops', 'at most 20 stops'],
  [
    'a lamp 7 stops too weak',
    (s) => Object.assign(s.lamps[0], { correctionStops: -7 }),
    'lamps[0].correctionStops',
    'at least -6 stops',
  ],
  ['a card in yards', withCard({ lengths: 'yards' }), 'card.lengths', 'must be one of "metres", "feet"'],
  ['a card on A3', withCard({ paper: 'a3' }), 'card.paper', 'must be one of "a4", "letter"'],
  ['a long permission', withCard({ permission: 'x'.repeat(161) }), 'card.permission', 'at most 160'],
  ['a permission of two lines', withCard({ permission: 'asked\nno' }), 'card.permission', 'one line'],
  [
    'a pace of 3 m',
    (s) => Object.assign(s, { walking: { paceMetres: 3 } }),
    'walking.paceMetres',
    'at most 1.5 metres',
  ],
];

describe('nights, test shots and the card', () => {
  it.each(cases)('%s: an error that names the field', (_, change, path, words) => {
    expectError(errorOf(changed(change)), path === 'nights[1].id' ? 'reference' : 'field', path, words);
  });

  it('keeps what was done on a night though its scheme and passes are gone', () => {
    const { nights } = parseSetup(changed(withNights([goodNight])));
    expect(nights[0]).toMatchObject({ schemeId: 'gone-since', note: '' });
    expect(nights[0]?.runs[0]).toEqual({
      ...goodRun,
      strokes: 1,
      distanceTimes: 1,
      hoursMoved: 0,
      heightTimes: 1,
      levelTimes: 1,
      verdict: 'not-said',
    });
    expect(nights[0]?.photos[0]).toMatchObject({ name: 'test 12.jpg', at: null, aperture: null, overStops: null });
  });
});
