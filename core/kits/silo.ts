import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { beam, rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';

const sides = 48;
const hoop = { outMetres: 0.025, highMetres: 0.06 };
/** How high the roof is over its radius. */
const roofShares = [0.45, 0.8];

/** The roof's section from the eaves to the top. */
const roofProfile = (dome: boolean, radius: number, high: number, up: number): [number, number][] => {
  const eaves = 0.06;
  if (!dome)
    return [
      [0, up - 0.02],
      [radius + eaves, up - 0.02],
      [radius + eaves, up + 0.03],
      [0, up + high],
    ];
  return [
    [0, up - 0.02],
    [radius, up - 0.02],
    ...Array.from({ length: 10 }, (_, k): [number, number] => {
      const turn = (k / 9) * (Math.PI / 2);
      return [k === 9 ? 0 : radius * Math.cos(turn), up + high * Math.sin(turn)];
    }),
  ];
};

const ladder = (radius: number, high: number): PartDraft[] => {
  const [half, out] = [0.2, radius + 0.14];
  const rungs = Math.max(Math.floor((high - 0.3) / 0.3), 1);
  return [
    ...[-half, half].map((east) => beam('Ladder side', [east, -out, 0], [east, -out, high], [0.04, 0.04])),
    ...Array.from({ length: rungs }, (_, k) =>
      rod('Rung', [-half, -out, 0.3 + k * 0.3], [half, -out, 0.3 + k * 0.3], [0.014, 0.014], { sides: 8 }),
    ),
    ...[0.2, 0.5, 0.8].flatMap((share) =>
      [-half, half].map((east) =>
        beam('Ladder bracket', [east, -out, high * share], [east, -radius * 0.9, high * share], [0.03, 0.03]),
      ),
    ),
  ];
};

export const silo: Kit = {
  name: 'silo',
  label: 'Silo',
  says: 'A round farm silo with hoops and a ladder at the front.',
  fields: [
    { key: 'heightMetres', label: 'Height in all', unit: 'm', min: 4, max: 40, initial: 14, step: 0.5 },
    { key: 'diameterMetres', label: 'Width across', unit: 'm', min: 1.5, max: 12, initial: 4.5, step: 0.1 },
    { key: 'roof', label: 'Roof', unit: '', min: 0, max: 1, initial: 1, step: 1, choices: ['Cone', 'Dome'] },
    { key: 'hoops', label: 'Hoops', unit: '', min: 0, max: 40, initial: 14, step: 1 },
    { key: 'skin', label: 'Made of', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: ['Concrete', 'Metal'] },
  ],
  make: ({ heightMetres = 14, diameterMetres = 4.5, roof = 1, hoops = 14, skin }) => {
    const count = Math.round(hoops);
    // hoops and eaves are part of the width that was typed
    const radius = diameterMetres / 2 - 0.06;
    const high = Math.min(radius * (roofShares[roof] as number), heightMetres * 0.5);
    const eaves = heightMetres - high;
    const body: PartDraft[] = [
      { kind: 'cylinder', name: 'Body', radiusMetres: radius, heightMetres: eaves, sides },
      {
        kind: 'turned',
        name: 'Roof',
        profile: roofProfile(roof === 1, radius + (roof === 1 ? 0.06 : 0), high, eaves),
        sides,
      },
      ...Array.from(
        { length: count },
        (_, k): PartDraft => ({
          kind: 'cylinder',
          name: 'Hoop',
          position: [0, 0, Math.max(((k + 0.5) / count) * eaves - hoop.highMetres / 2, 0)],
          radiusMetres: radius + hoop.outMetres,
          heightMetres: hoop.highMetres,
          sides,
        }),
      ),
    ];
    const iron = finishNamed('rusted-iron');
    return {
      finish: finishNamed(skin === 1 ? 'bare-metal' : 'concrete'),
      parts: tidyParts([...body, ...ladder(radius, eaves - 0.05).map((part) => ({ ...part, finish: iron }))]),
    };
  },
};
