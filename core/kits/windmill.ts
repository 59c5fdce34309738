import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { sailCross, sweptShare } from './shared/sails.ts';
import { rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';

/** Radius of the tower at its top over that at its foot, and height of the cap over that upper radius. */
const [taperShare, capShare] = [0.62, 1.05];
/** The shaft of the sails points up a little, so that the sails stand clear of the tower. */
const shaftTiltDegrees = 8;
const boardMetres = 0.25;
const boardStepMetres = 0.012;
const mostBoards = 23;
const apart = 0.001;

interface Tower {
  readonly foot: number;
  readonly top: number;
  readonly height: number;
}

const radiusAt = ({ foot, top, height }: Tower, up: number): number => foot + ((top - foot) * up) / height;

const roundTower = ({ foot, top, height }: Tower): PartDraft => ({
  kind: 'cylinder',
  name: 'Tower',
  radiusMetres: foot,
  topRadiusMetres: top,
  heightMetres: height,
  sides: 48,
});

/** Eight flat sides of lapped boards: each board's lower edge stands out over the one below. */
const boardedTower = (tower: Tower): PartDraft => {
  const boards = Math.min(Math.max(Math.round(tower.height / boardMetres), 2), mostBoards);
  const each = tower.height / boards;
  const ring = (up: number, inward: number) => {
    // corners between the sides, so that a side faces south
    const radius = (radiusAt(tower, up) - inward) / Math.cos(Math.PI / 8);
    return {
      northMetres: up,
      outline: Array.from({ length: 8 }, (_, k): [number, number] => {
        const turn = ((k + 0.5) * Math.PI) / 4;
        return [radius * Math.cos(turn), radius * Math.sin(turn)];
      }),
    };
  };
  return {
    kind: 'loft',
    name: 'Tower',
    // sections follow each other upward
    tiltDegrees: -90,
    sections: Array.from({ length: boards }, (_, k) => [
      ring(k * each + (k === 0 ? 0 : apart), 0),
      ring((k + 1) * each, boardStepMetres),
    ]).flat(),
  };
};

/** A flat thing on the tower's side, such as a door: leans as the wall does. */
const onWall = (
  name: string,
  tower: Tower,
  [low, high]: readonly [number, number],
  widthMetres: number,
  turnDegrees: number,
): PartDraft => {
  const deep = 0.16;
  const turn = (turnDegrees * Math.PI) / 180;
  const from = radiusAt(tower, low) - deep / 2 + 0.05;
  return {
    kind: 'box',
    name,
    position: [-Math.sin(turn) * from, -Math.cos(turn) * from, low],
    turnDegrees,
    tiltDegrees: (Math.atan2(tower.foot - tower.top, tower.height) * 180) / Math.PI,
    widthMetres,
    depthMetres: deep,
    heightMetres: high - low,
  };
};

const cap = ({ top, height }: Tower, high: number): PartDraft => {
  const wide = top + 0.12;
  const bend = 8;
  return {
    kind: 'turned',
    name: 'Cap',
    position: [0, 0, height - 0.05],
    sides: 40,
    profile: [
      [0, 0],
      [wide, 0],
      ...Array.from({ length: bend }, (_, k): [number, number] => {
        const turn = ((k + 0.4) / (bend + 0.4)) * (Math.PI / 2);
        return [wide * Math.cos(turn), (high + 0.05 - 0.02) * Math.sin(turn) ** 1.1];
      }),
      [0, high + 0.05],
    ],
  };
};

export const windmill: Kit = {
  name: 'windmill',
  label: 'Windmill',
  says: 'A tapered tower with a cap and four lattice sails to the front.',
  fields: [
    { key: 'heightMetres', label: 'Height of the cap', unit: 'm', min: 6, max: 30, initial: 12, step: 0.5 },
    { key: 'diameterMetres', label: 'Width at the foot', unit: 'm', min: 3, max: 10, initial: 5.6, step: 0.1 },
    { key: 'clearMetres', label: 'Sails clear the ground by', unit: 'm', min: 0.5, max: 3, initial: 1.2, step: 0.1 },
    { key: 'sailsDegrees', label: 'Sails turned by', unit: '°', min: 0, max: 90, initial: 40, step: 5 },
    {
      key: 'tower',
      label: 'Tower',
      unit: '',
      min: 0,
      max: 1,
      initial: 0,
      step: 1,
      choices: ['Round, whitewashed', 'Eight-sided, boarded'],
    },
  ],
  make: ({ heightMetres = 12, diameterMetres = 5.6, clearMetres = 1.2, sailsDegrees = 40, tower: kind }) => {
    const foot = diameterMetres / 2;
    const top = Math.min(foot * taperShare, heightMetres * 0.25);
    const capHigh = top * capShare;
    const tower: Tower = { foot, top, height: heightMetres - capHigh };
    const hubUp = tower.height + capHigh * 0.32;
    const tilt = (shaftTiltDegrees * Math.PI) / 180;
    const length = (hubUp - clearMetres) / (sweptShare * Math.cos(tilt));
    // the sails' tips go by the tower where it is widest
    const slope = (foot - top) / tower.height;
    const out = top + 0.55 + Math.max(slope - Math.tan(tilt), 0) * length + length * 0.03;
    const dark = { finish: finishNamed('dark-paint') };
    const wood = { finish: finishNamed('weathered-timber') };
    const shaftRadius = Math.min(0.3, top * 0.18);
    const shaft = rod(
      'Shaft',
      [0, 0, hubUp - out * Math.tan(tilt)],
      [0, -out - 0.15, hubUp + 0.15 * Math.tan(tilt)],
      [shaftRadius, shaftRadius * 0.9],
      { sides: 16 },
    );
    const doorHigh = Math.min(2, tower.height * 0.3);
    return {
      finish: finishNamed(kind === 1 ? 'dark-timber' : 'whitewash'),
      parts: tidyParts([
        kind === 1 ? boardedTower(tower) : roundTower(tower),
        { ...cap(tower, capHigh), finish: finishNamed('slate') },
        { ...onWall('Door', tower, [0, doorHigh], 1, 0), ...dark },
        ...[0.5, 0.78].map((share) => ({
          ...onWall('Window', tower, [share * tower.height, share * tower.height + 0.7], 0.55, 0),
          ...dark,
        })),
        { ...onWall('Window', tower, [0.55 * tower.height, 0.55 * tower.height + 0.7], 0.55, 90), ...dark },
        { ...onWall('Window', tower, [0.4 * tower.height, 0.4 * tower.height + 0.7], 0.55, -90), ...dark },
        { ...shaft, ...wood },
        ...sailCross([0, -out, hubUp], length, sailsDegrees, shaftTiltDegrees).map((part) => ({ ...part, ...wood })),
      ]),
    };
  },
};
