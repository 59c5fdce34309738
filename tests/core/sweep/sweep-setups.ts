import { readFileSync } from 'node:fs';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Frame, Lamp, Pass, Setup } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import { type PassPlace, passAt } from '../../../core/sweep/pass-at.ts';
import { setupOfCell } from '../../../core/sweep/setup-of-cell.ts';
import { goodSetup, type Loose } from '../setup/good-setup.ts';
import { onePassSetup } from '../support/scenes.ts';

const stonesText = readFileSync('assets/setups/three-stones.json', 'utf8');
export const stones: Setup = parseSetup(stonesText);
export const stonesKey: PassPlace = { schemeId: 'side', frameId: 'painted', passId: 'key' };

/** The stones with a second pass from the other side, changed as a test needs it. */
export const stonesWithFill = (change: (fill: Loose, setup: Loose) => void = () => undefined): Setup => {
  const setup = JSON.parse(stonesText) as Loose;
  const { passes } = setup.schemes[0].frames[1];
  const fill = {
    ...structuredClone(passes[0]),
    id: 'fill',
    name: 'Fill',
    waypoints: [{ position: [-3, 2, 1.5], aim: [0.2, 7.75, 1.2] }],
  };
  passes.push(fill);
  change(fill, setup);
  return validateSetup(setup);
};
export const stonesFill: PassPlace = { ...stonesKey, passId: 'fill' };

/** A barn wall lit by a torch that is walked: two waypoints, 1 s to 5 s of a frame of 10 s. */
const barnFrom = (setup: Loose): Setup => {
  const [wall, post] = setup.subjects;
  // the camera stands where both would
  wall.position = [0, 8.5, 0];
  post.position = [3, 9, 0];
  return validateSetup(setup);
};
export const barn: Setup = barnFrom(goodSetup());
export const barnKey: PassPlace = { schemeId: 'side', frameId: 'land', passId: 'key' };

/** A very small bare light square in front of a wall, 4 m from it, on for 5 s of a frame of 10 s. */
export const wallSetup = (lamp: object = {}, pass: object = {}): Setup =>
  onePassSetup({
    camera: { position: [3, -12, 2], aim: [0, 0, 2] },
    // so small that its size does not matter
    lamp: { diameterMm: 1, lowestLevelPercent: 1, ...lamp },
    pass: { off: 5, waypoints: [{ position: [0, -4, 2], aim: [0, 0, 2] }], ...pass },
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        parts: [{ kind: 'box', position: [0, 0.5, 0], widthMetres: 8, depthMetres: 1, heightMetres: 6 }],
      },
    ],
  });
export const wallPass: PassPlace = { schemeId: 'scheme', frameId: 'frame', passId: 'pass' };

export const foundIn = (setup: Setup, place: PassPlace): { pass: Pass; frame: Frame; lamp: Lamp } =>
  passAt(setup, place);

/** A cell's setup as it comes back from a file. */
export const throughFile = (setup: Setup, place: PassPlace, cell: SweepCell): readonly [Setup, Setup] => {
  const changed = setupOfCell(setup, place, cell);
  return [changed, parseSetup(formatSetup(changed))];
};
