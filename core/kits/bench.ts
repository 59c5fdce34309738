import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { placeTogether } from './shared/frame.ts';
import { tidyParts } from './shared/tidy-parts.ts';

const slat = { wideMetres: 0.09, gapMetres: 0.012, thickMetres: 0.035 };
const leg = { wideMetres: 0.07, sunkMetres: 0.05 };
/** How far the back leans, degrees: a comfortable lean, by eye. */
const backLeanDegrees = 12;

const box = (
  name: string,
  [east, north, up]: readonly [number, number, number],
  [widthMetres, depthMetres, heightMetres]: readonly [number, number, number],
): PartDraft => ({ kind: 'box', name, position: [east, north, up], widthMetres, depthMetres, heightMetres });

/** Where legs stand: under both ends, and between them so that none is farther than 1.8 m from the next. */
const legPlaces = (length: number): number[] => {
  const half = length / 2 - Math.min(0.25, length * 0.15);
  const bays = Math.max(Math.ceil((2 * half) / 1.8), 1);
  return Array.from({ length: bays + 1 }, (_, k) => -half + (2 * half * k) / bays);
};

/** Slats that lie side by side and fill a depth exactly: their middles, and how wide they are. */
const slatsIn = (depth: number): { readonly middles: readonly number[]; readonly wide: number } => {
  const count = Math.max(Math.round((depth + slat.gapMetres) / (slat.wideMetres + slat.gapMetres)), 1);
  const wide = (depth + slat.gapMetres) / count - slat.gapMetres;
  return {
    wide,
    middles: Array.from({ length: count }, (_, k) => (k + 0.5) * (wide + slat.gapMetres) - slat.gapMetres / 2),
  };
};

const back = (length: number, depth: number, seat: number, top: number, places: readonly number[]): PartDraft[] => {
  const lean = (backLeanDegrees * Math.PI) / 180;
  // the upper edge of a leaning plank is its front one, and stands where the back ends
  const tall = (top - seat) / Math.cos(lean);
  const slatThick = 0.03;
  const { middles, wide } = slatsIn(tall * 0.62);
  const from = tall * 0.38;
  const upright = [
    ...places.map((east) =>
      box('Back post', [east, leg.wideMetres / 2, -0.06], [leg.wideMetres * 0.8, 0.05, tall * 0.97 + 0.06]),
    ),
    ...middles.map((middle) => box('Back slat', [0, 0, from + middle - wide / 2], [length, slatThick, wide])),
  ];
  return placeTogether(upright, {
    position: [0, depth / 2 - leg.wideMetres, seat - (slatThick / 2) * Math.sin(lean)],
    tiltDegrees: backLeanDegrees,
  });
};

export const bench: Kit = {
  name: 'bench',
  label: 'Bench',
  says: 'A slatted garden bench that looks to the front.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 0.5, max: 5, initial: 1.6, step: 0.05 },
    { key: 'seatMetres', label: 'Height of the seat', unit: 'm', min: 0.25, max: 0.7, initial: 0.45, step: 0.01 },
    { key: 'depthMetres', label: 'Depth of the seat', unit: 'm', min: 0.25, max: 0.8, initial: 0.45, step: 0.01 },
    { key: 'back', label: 'Back', unit: '', min: 0, max: 1, initial: 1, step: 1, choices: ['None', 'Slatted'] },
    { key: 'topMetres', label: 'Height of the back', unit: 'm', min: 0.75, max: 1.3, initial: 0.85, step: 0.05 },
  ],
  make: ({ lengthMetres = 1.6, seatMetres = 0.45, depthMetres = 0.45, back: hasBack, topMetres = 0.85 }) => {
    const places = legPlaces(lengthMetres);
    const under = seatMetres - slat.thickMetres + 0.002;
    const { middles, wide } = slatsIn(depthMetres);
    const frames = places.flatMap((east) => [
      ...[-1, 1].map((side) =>
        box(
          'Leg',
          [east, side * (depthMetres / 2 - leg.wideMetres / 2 - 0.01), -leg.sunkMetres],
          [leg.wideMetres, leg.wideMetres, under + leg.sunkMetres - 0.01],
        ),
      ),
      box('Cross rail', [east, 0, under - 0.08], [leg.wideMetres * 0.7, depthMetres - 0.02, 0.08]),
    ]);
    const parts = [
      ...middles.map((middle) =>
        box(
          'Slat',
          [0, middle - depthMetres / 2, seatMetres - slat.thickMetres],
          [lengthMetres, wide, slat.thickMetres],
        ),
      ),
      ...frames,
      ...(hasBack === 1 ? back(lengthMetres, depthMetres, seatMetres, topMetres, places) : []),
    ];
    return { finish: finishNamed('weathered-timber'), parts: tidyParts(parts) };
  },
};
