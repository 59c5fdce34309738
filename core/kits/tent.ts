import { finishNamed } from '../setup/finish-presets.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { clothAcross, clothAlong, clothMetres, type Point } from './shared/cloth.ts';
import { rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';

/** How far the hem lies under the ground, so that no light gets out under it, metres. */
const hemMetres = 0.01;
/** How far the cloth over the tent lies inside the outline of its ends, so that the two cross and leave no slit, metres. */
const seamMetres = 0.002;
const arcPieces = 36;

interface Size {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** The outline of a section from the west hem over the top to the east hem, set in by some metres. */
type Line = (inMetres: number) => Point[];

const halfRound =
  ({ width, height }: Size): Line =>
  (inward) =>
    Array.from({ length: arcPieces + 1 }, (_, k): Point => {
      const turn = (Math.PI * k) / arcPieces;
      return [-Math.cos(turn) * (width / 2 - inward), Math.sin(turn) * (height - inward)];
    });

const ridge =
  ({ width, height }: Size): Line =>
  (inward) => {
    const slope = Math.hypot(width / 2, height);
    const across = width / 2 - (inward * slope) / height;
    return [
      [-across, 0],
      [0, height - (inward * slope) / (width / 2)],
      [across, 0],
    ];
  };

/** With the hem: straight down into the ground at both ends. */
const withHem = (points: readonly Point[]): Point[] => {
  const [first, last] = [points[0] as Point, points.at(-1) as Point];
  return [[first[0], -hemMetres], ...points, [last[0], -hemMetres]];
};

/** An end with its doorway: a pointed opening up from the ground. */
const openEnd = (outline: readonly Point[], { width, height }: Size): Point[] => {
  const half = width * 0.27;
  return [
    ...outline,
    [half, -hemMetres],
    [half * 0.8, height * 0.45],
    [0, height * 0.78],
    [-half * 0.8, height * 0.45],
    [-half, -hemMetres],
  ];
};

const cloth = (size: Size, line: Line, open: boolean): PartDraft[] => {
  const half = size.length / 2;
  const end = withHem(line(0));
  const over = withHem(line(seamMetres));
  const under = withHem(line(seamMetres + clothMetres));
  return [
    clothAlong('Cloth', [-half, half], over, under),
    clothAcross('Front', -half, open ? openEnd(end, size) : end),
    clothAcross('Back', half - clothMetres, end),
  ];
};

/** Poles under the cloth, which show dark when the tent glows. */
const hoops = ({ length }: Size, line: Line): PartDraft[] =>
  [-1, 0, 1].map((along): PartDraft => {
    const north = along * (length / 2 - 0.05);
    const outline = [...line(seamMetres + 0.003), ...line(seamMetres + 0.015).reverse()];
    return {
      kind: 'loft',
      name: 'Pole',
      sections: [north - 0.006, north + 0.006].map((northMetres) => ({ northMetres, outline })),
    };
  });

const ridgePoles = ({ length, height }: Size): PartDraft[] => {
  const [end, under] = [length / 2 - 0.06, height - 0.05];
  return [
    ...[-end, end].map((north) => rod('Pole', [0, north, -0.05], [0, north, under], [0.013, 0.013], { sides: 10 })),
    rod('Ridge pole', [0, -end, under - 0.012], [0, end, under - 0.012], [0.012, 0.012], { sides: 10 }),
  ];
};

const pegged = (size: Size, at: Point): PartDraft[] =>
  [-1, 1].flatMap((north) =>
    [-1, 1].flatMap((east) => {
      const foot = [east * (size.width / 2 + 0.45), north * (size.length / 2 + 0.35)] as const;
      const top = [east * (at[0] - 0.004), north * (size.length / 2 - 0.03), at[1]] as const;
      return [
        rod('Guy line', top, [...foot, 0.05], [0.0015, 0.0015], { sides: 6 }),
        rod('Peg', [foot[0], foot[1], -0.15], [foot[0] + east * 0.02, foot[1] + north * 0.015, 0.07], [0.006, 0.006], {
          sides: 8,
        }),
      ];
    }),
  );

export const tent: Kit = {
  name: 'tent',
  label: 'Tent',
  says: 'A small tent of thin cloth that glows with a lantern inside. Its door is at the front.',
  fields: [
    { key: 'shape', label: 'Shape', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: ['Half round', 'Ridge'] },
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 1.5, max: 8, initial: 2.4, step: 0.1 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 0.8, max: 5, initial: 1.5, step: 0.1 },
    { key: 'heightMetres', label: 'Height', unit: 'm', min: 0.6, max: 3, initial: 1.1, step: 0.05 },
    { key: 'door', label: 'Door', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: ['Closed', 'Open'] },
    { key: 'throughShare', label: 'Share of light let through', unit: '', min: 0, max: 0.6, initial: 0.3, step: 0.05 },
  ],
  make: ({ shape, lengthMetres = 2.4, widthMetres = 1.5, heightMetres = 1.1, door, throughShare = 0.3 }) => {
    const size: Size = { length: lengthMetres, width: widthMetres, height: heightMetres };
    const line = shape === 1 ? ridge(size) : halfRound(size);
    const pole = { finish: finishNamed('dark-paint') };
    const top: Point = shape === 1 ? [0.004, heightMetres - 0.01] : (line(0)[arcPieces / 2 + 6] as Point);
    const sheet: PartDraft = {
      kind: 'box',
      name: 'Ground sheet',
      widthMetres: widthMetres - 0.06,
      depthMetres: lengthMetres - 0.04,
      heightMetres: 0.006,
    };
    const inner = [...(shape === 1 ? ridgePoles(size) : hoops(size, line)), ...pegged(size, top), sheet];
    const finish: FinishDraft = { ...finishNamed('tent-cloth'), transmittance: throughShare };
    return {
      finish,
      parts: tidyParts([...cloth(size, line, door === 1), ...inner.map((part) => ({ ...part, ...pole }))]),
    };
  },
};
