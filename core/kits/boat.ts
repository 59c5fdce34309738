import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { frameOf, type Place, placeInFrame, placeTogether } from './shared/frame.ts';
import { type HullShape, stationAt } from './shared/hull.ts';
import { hullParts } from './shared/hull-parts.ts';
import { tidyParts } from './shared/tidy-parts.ts';

/** A boat that lies on the shore has worked itself in a little. */
const sunkMetres = 0.02;

/** Two short logs under the side of a boat that lies keel up and leans. */
const props = (hull: HullShape, gunwaleAt: (along: number) => Place): PartDraft[] =>
  [-0.25, 0.25].map((along) => {
    const [east, north, up] = gunwaleAt(along);
    return {
      kind: 'cylinder',
      name: 'Prop',
      position: [east, north, -0.05],
      radiusMetres: 0.06,
      heightMetres: up + 0.05 + Math.min(0.03, hull.depthMetres * 0.05),
      sides: 12,
    };
  });

export const boat: Kit = {
  name: 'boat',
  label: 'Wooden boat',
  says: 'A planked rowing boat on the shore, on its keel or keel up. Bow to the front.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 2.5, max: 12, initial: 6.5, step: 0.1 },
    { key: 'beamMetres', label: 'Width', unit: 'm', min: 1, max: 4, initial: 2.2, step: 0.1 },
    {
      key: 'depthMetres',
      label: 'Depth amidships, without keel',
      unit: 'm',
      min: 0.4,
      max: 2,
      initial: 1.1,
      step: 0.05,
    },
    { key: 'planks', label: 'Planks on each side', unit: '', min: 0, max: 16, initial: 12, step: 1 },
    { key: 'heelDegrees', label: 'Leans to the right', unit: '°', min: -30, max: 30, initial: 18, step: 1 },
    { key: 'lies', label: 'Lies', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: ['On its keel', 'Keel up'] },
    { key: 'stern', label: 'Stern', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: ['Pointed', 'Flat'] },
  ],
  make: ({ lengthMetres = 6.5, beamMetres = 2.2, depthMetres = 1.1, planks = 12, heelDegrees = 18, lies, stern }) => {
    const hull: HullShape = { lengthMetres, beamMetres, depthMetres, planks: Math.round(planks), transom: stern === 1 };
    const { parts, extremes } = hullParts(hull);
    const rollDegrees = lies === 1 ? 180 + heelDegrees : heelDegrees;
    const turned = extremes.map((point) => placeInFrame(frameOf({ rollDegrees }), point));
    const [easts, ups] = [turned.map(([east]) => east), turned.map(([, , up]) => up)];
    const position: Place = [-(Math.min(...easts) + Math.max(...easts)) / 2, 0, -Math.min(...ups) - sunkMetres];
    const lying = { position, rollDegrees };
    const raisedSide = heelDegrees < 0 ? -1 : 1;
    const propped =
      lies === 1 && Math.abs(heelDegrees) > 2
        ? props(hull, (along) => {
            const { halfBeamMetres, northMetres, sheerMetres } = stationAt(hull, along);
            return placeInFrame(frameOf(lying), [
              raisedSide * (halfBeamMetres - 0.03),
              northMetres,
              sheerMetres + 0.025,
            ]);
          })
        : [];
    return {
      finish: finishNamed('weathered-timber'),
      parts: tidyParts([...placeTogether(parts, lying), ...propped]),
    };
  },
};
