import type { Vec3 } from '../../../core/geometry/vec.ts';
import type { Beam } from '../../../core/photometry/beam.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { validateSetup } from '../../../core/setup/parse-setup.ts';
import { finish } from '../../../core/setup/schema/fields.ts';
import type { Ground, Setup, Subject } from '../../../core/setup/schema/setup.ts';
import { subject } from '../../../core/setup/schema/subject.ts';
import { buildStage, type Stage } from '../../../core/world/stage.ts';
import type { Source } from '../../../core/world/world.ts';

/** Small invented scenes that the tests share. Positions in documents are [east, north, up]. */

export const bareGround: Ground = { finish: finish.parse({ reflectance: 0.18 }), relief: [] };

/** A subject with the schema's defaults filled in. */
export const subjectOf = (id: string, parts: readonly object[], extra: object = {}): Subject =>
  subject.parse({ id, name: `The ${id}`, parts, ...extra });

export const stageWith = (...subjects: Subject[]): Stage => buildStage(bareGround, subjects);

/** Falls with the cosine off the axis: 1/pi cd per lumen in the middle. */
export const cosineBeam: Beam = { exponent: 1, cosSpill: -1, cosSpillEven: -1, spillShare: 0 };
/** Even over the half space in front: 1/2pi cd per lumen. */
export const halfSpaceBeam: Beam = { exponent: 1, cosSpill: 0, cosSpillEven: 0, spillShare: 1 };

export const discEmitter = (radiusMetres: number, beam: Beam = cosineBeam): Emitter => ({
  shape: 'disc',
  halfWidthMetres: radiusMetres,
  halfHeightMetres: 0,
  beam,
});

/** A lamp that stands still, in world axes. */
export const standing = (position: Vec3, aim: Vec3, emitter: Emitter): Extract<Source, { kind: 'lamp' }> => ({
  kind: 'lamp',
  emitter,
  path: [{ seconds: 0, position, aim }],
  onOff: [0, 1],
  holder: null,
});

/** What a test wants to say about a setup with one lamp, one frame and one pass. */
export interface OnePass {
  readonly camera: object;
  readonly lamp?: object;
  readonly pass: object;
  readonly frame?: object;
  readonly subjects?: readonly object[];
  readonly ground?: object;
  readonly place?: object;
  /** More lamps, and passes after the first. */
  readonly lamps?: readonly object[];
  readonly passes?: readonly object[];
}

/** A setup of one pass, checked by the parser. */
export const onePassSetup = (what: OnePass): Setup => {
  const { camera, lamp, pass, frame, subjects = [], ground = {}, place = {}, lamps = [], passes = [] } = what;
  return validateSetup({
    format: 'lampfall-setup',
    version: 3,
    id: 'test',
    name: 'Test',
    ground,
    place,
    subjects,
    camera,
    lamps: [
      {
        kind: 'torch',
        id: 'torch',
        name: 'Torch',
        output: { from: 'peak-candela', candela: 100 },
        beam: { shape: 'open' },
        diameterMm: 20,
        ...lamp,
      },
      ...lamps,
    ],
    schemes: [
      {
        id: 'scheme',
        name: 'Scheme',
        frames: [
          {
            id: 'frame',
            name: 'Frame',
            seconds: 10,
            ...frame,
            passes: [{ id: 'pass', name: 'Pass', lampId: 'torch', off: 1, ...pass }, ...passes],
          },
        ],
      },
    ],
  });
};
