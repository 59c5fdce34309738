import type { Severity } from '../../../core/cautions/caution.ts';

const shapes: Record<Severity, { path: string; word: string }> = {
  danger: { path: 'M7 1L13.5 13H0.5Z', word: 'Danger' },
  warning: { path: 'M7 1L13 7L7 13L1 7Z', word: 'Warning' },
  note: { path: 'M7 1A6 6 0 1 1 6.99 1Z', word: 'Note' },
};

/** A shape for how bad a caution is: filled triangle, open diamond, open circle. Colour plays no part. */
export const CautionMark = ({ severity }: { severity: Severity }) => (
  <svg
    className={`caution-mark caution-${severity}`}
    viewBox="0 0 14 14"
    width={12}
    height={12}
    role="img"
    aria-label={shapes[severity].word}
  >
    <path d={shapes[severity].path} />
  </svg>
);

/** What a caution is called where there is room for a word only. */
export const cautionWords: Readonly<Record<string, string>> = {
  'near-axis': 'flat',
  'lamp-in-frame': 'lamp in frame',
  burnt: 'burnt',
  'too-dark': 'too dark',
  'unreachable-level': 'out of reach',
  'hot-spot': 'hot spot',
  uneven: 'uneven',
  flare: 'flare',
  'out-of-depth': 'soft',
  'star-trails': 'star trails',
  'above-quarter-moon': 'over quarter moon',
  'beam-at-sky': 'beam at the sky',
  eye: 'eyes',
  'lamp-below-ground': 'under the ground',
  'inside-subject': 'inside a subject',
  'cannot-walk': 'too far to walk',
  'late-from-camera': 'delay too short',
  'person-in-frame': 'you show',
  'person-shadow': 'your shadow',
  terrain: 'terrain',
  'too-quick': 'too quick to walk',
  'too-high': 'too high to hold',
  'shadows-disagree': 'two shadows',
  'land-over-sky': 'outshines the sky',
  'focus-apart': 'gap in focus',
  'moon-in-frame': 'moon in frame',
  'moon-washes-core': 'moon too bright',
  'sun-up': 'sun up',
  'sky-burnt': 'white sky',
  twilight: 'twilight',
  'core-hidden': 'core hidden',
  'glow-over-core': 'glow over the core',
  'silhouette-lost': 'outline lost',
  'zone-unknown': 'zone unknown',
  'clock-change': 'clock change',
};
