import type { PartDraft } from '../../../../core/kits/kit.ts';
import { part } from '../../../../core/setup/schema/part.ts';
import type { Part, PartKind } from '../../../../core/setup/schema/setup.ts';

/** What a part of each kind starts as; sizes that one meets outdoors. A scan comes from a file, not from here. */
export type NewPartKind = Exclude<PartKind, 'scan'>;

const drafts: { readonly [K in NewPartKind]: Extract<PartDraft, { kind: K }> } = {
  box: { kind: 'box', widthMetres: 1, depthMetres: 1, heightMetres: 1 },
  wedge: { kind: 'wedge', widthMetres: 4, depthMetres: 3, heightMetres: 1.2 },
  cylinder: { kind: 'cylinder', radiusMetres: 0.15, heightMetres: 2 },
  cone: { kind: 'cone', radiusMetres: 0.6, heightMetres: 1.5 },
  sphere: { kind: 'sphere', radiusMetres: 0.5 },
  capsule: { kind: 'capsule', radiusMetres: 0.25, heightMetres: 1.8 },
  plane: { kind: 'plane', widthMetres: 2, depthMetres: 2, position: [0, 0, 0.02] },
  ring: { kind: 'ring', radiusMetres: 2, tubeRadiusMetres: 0.4 },
  turned: {
    kind: 'turned',
    profile: [
      [0.5, 0],
      [0.62, 0.4],
      [0.5, 0.9],
      [0.28, 1.1],
      [0.3, 1.2],
    ],
  },
  prism: {
    kind: 'prism',
    outline: [
      [-1, -0.6],
      [1, -0.6],
      [1.2, 0.3],
      [0, 0.9],
      [-1.2, 0.3],
    ],
    heightMetres: 0.8,
  },
  loft: {
    kind: 'loft',
    // a short hull, keel down
    sections: (
      [
        [-1.5, 0.25],
        [-0.5, 0.6],
        [0.7, 0.65],
        [1.8, 0.08],
      ] as const
    ).map(([northMetres, half]) => ({
      northMetres,
      outline: [
        [-half, 0.6],
        [-half * 0.8, 0.25],
        [0, 0.02],
        [half * 0.8, 0.25],
        [half, 0.6],
      ] as [number, number][],
    })),
  },
  wall: {
    kind: 'wall',
    widthMetres: 5,
    thicknessMetres: 0.5,
    heightMetres: 2.4,
    openings: [{ acrossMetres: 0, sillMetres: 0, widthMetres: 0.9, heightMetres: 2 }],
  },
};

/** A part of a kind with good first sizes, at the subject’s own origin. */
export const newPart = (kind: NewPartKind): Part => part.parse(drafts[kind]);

/** What a kind of part is called. */
export const partWords: Readonly<Record<PartKind, string>> = {
  box: 'Block',
  wedge: 'Roof or ramp',
  cylinder: 'Post',
  cone: 'Cone',
  sphere: 'Ball or egg',
  capsule: 'Rounded post',
  plane: 'Sheet',
  ring: 'Arch',
  turned: 'Turned shape',
  prism: 'Outline drawn up',
  loft: 'Skin over sections',
  wall: 'Wall with openings',
  scan: 'Scan',
};

/** The kinds in the order in which they are offered. */
export const newPartKinds = Object.keys(drafts) as readonly NewPartKind[];
