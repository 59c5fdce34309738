import { Matrix3, type Texture, Vector2, Vector3 } from 'three';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import { basisAround } from '../../../core/geometry/vec.ts';
import { isMeasured, lobePeakPerLumen, spillLevelPerLumen } from '../../../core/photometry/beam.ts';
import type { Emitter, EmitterShape } from '../../../core/photometry/emitter.ts';
import type { DomeLight } from '../../../core/sky/dome-light.ts';
import { domeLightOf } from '../../../core/sky/dome-of.ts';
import { partNumber, type Traced } from '../../../core/trace/mask.ts';
import { type MomentsTaken, momentCountOf, momentsPerSample, momentsTaken } from '../../../core/trace/moments-taken.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { sourceKinds } from './shaders/irradiance.glsl.ts';
import type { SourceTables } from './source-tables.ts';
import type { StageTextures } from './stage-textures.ts';

const shapes: Record<EmitterShape, number> = { point: 0, disc: 1, rectangle: 2, sphere: 3, tube: 4 };
const vec3 = () => ({ value: new Vector3() });
const vec3s = () => ({ value: Array.from({ length: momentsPerSample }, () => new Vector3()) });

export const stageUniforms = () => ({
  nodes: { value: null as StageTextures['nodes'] | null },
  corners: { value: null as StageTextures['corners'] | null },
  normals: { value: null as StageTextures['normals'] | null },
  finishes: { value: null as StageTextures['finishes'] | null },
});

export const cameraUniforms = () => ({
  eye: vec3(),
  viewRight: vec3(),
  viewUp: vec3(),
  viewForward: vec3(),
  viewTangents: { value: new Vector2() },
  viewLens: { value: new Vector2() },
  pictureSize: { value: new Vector2() },
  sampleIndex: { value: 0 },
});

export const sourceUniforms = () => ({
  maskPart: { value: 0 },
  towardMoon: vec3(),
  moonFirst: vec3(),
  moonSecond: vec3(),
  moonRadius: { value: 0 },
  haze: { value: new Vector2() },
  domeTable: { value: null as Texture | null },
  domeLuxAllRound: { value: 0 },
  domeMiddle: vec3(),
  domeHarmonics: { value: new Array<number>(9).fill(0) },
  momentPosition: vec3s(),
  momentAxis: vec3s(),
  momentFirst: vec3s(),
  momentFeet: vec3s(),
  holderClothes: { value: -1 },
  lampHalfSize: { value: new Vector2() },
  lampLobe: { value: new Vector2() },
  lampSpill: vec3(),
  lampFront: { value: new Vector2() },
  measuredTurn: { value: 0 },
  measuredTable: { value: null as Texture | null },
});

/** Points uniforms at a stage. */
export const setStage = (u: ReturnType<typeof stageUniforms>, textures: StageTextures): void => {
  u.nodes.value = textures.nodes;
  u.corners.value = textures.corners;
  u.normals.value = textures.normals;
  u.finishes.value = textures.finishes;
};

/** Sets camera, picture size and sample. */
export const setCamera = (
  u: ReturnType<typeof cameraUniforms>,
  view: CameraView,
  size: { width: number; height: number },
  sample: number,
): void => {
  u.eye.value.set(...view.position);
  u.viewRight.value.set(...view.right);
  u.viewUp.value.set(...view.up);
  u.viewForward.value.set(...view.forward);
  u.viewTangents.value.set(view.tanHalfWidth, view.tanHalfHeight);
  u.viewLens.value.set(view.lensRadiusMetres, view.focusMetres);
  u.pictureSize.value.set(size.width, size.height);
  u.sampleIndex.value = sample;
};

const setBeam = (u: ReturnType<typeof sourceUniforms>, { beam, front }: Emitter, tables: SourceTables): void => {
  u.lampFront.value.set(front?.spreadShare ?? 0, front?.cosSnoot ?? -2);
  u.measuredTable.value = isMeasured(beam) ? tables.ofBeam(beam) : null;
  if (isMeasured(beam)) {
    u.measuredTurn.value = beam.turnRadians;
    return;
  }
  u.lampLobe.value.set(beam.exponent, (1 - beam.spillShare) * lobePeakPerLumen(beam.exponent));
  u.lampSpill.value.set(beam.cosSpill, beam.cosSpillEven, spillLevelPerLumen(beam));
};

/** A dome that gives no light is no source of a frame. */
const setDome = (u: ReturnType<typeof sourceUniforms>, dome: DomeLight | null, tables: SourceTables): void => {
  if (!dome) return;
  u.domeTable.value = tables.ofDome(dome);
  u.domeLuxAllRound.value = dome.luxAllRound;
  u.domeMiddle.value.set(...dome.middle);
  u.domeHarmonics.value = [...dome.harmonics];
};

const setMoments = (u: ReturnType<typeof sourceUniforms>, { poses, feet, clothes }: MomentsTaken): void => {
  for (const [m, { position, axis }] of poses.entries()) {
    u.momentPosition.value[m]?.set(...position);
    u.momentAxis.value[m]?.set(...axis);
    u.momentFirst.value[m]?.set(...basisAround(axis).first);
  }
  u.holderClothes.value = feet ? clothes : -1;
  for (const [m, place] of feet?.entries() ?? []) u.momentFeet.value[m]?.set(...place);
};

/** What a program for light is compiled for: the kind of source, and of a lamp what it is. Other sources have no lamp. */
export const sourceDefines = (source: Traced): Readonly<Record<string, number>> => {
  const lamp = source.kind === 'lamp' ? source : null;
  return {
    SOURCE_KIND: sourceKinds[source.kind],
    LAMP_SHAPE: lamp ? shapes[lamp.emitter.shape] : 0,
    HAS_MEASURED: lamp && isMeasured(lamp.emitter.beam) ? 1 : 0,
    HAS_HOLDER: lamp?.holder?.isDrawn ? 1 : 0,
    MOMENTS: lamp ? momentCountOf(lamp) : 1,
  };
};

/** Sets a source, or the part of the picture that a mask is of, as a sample takes it. */
export const setSource = (
  u: ReturnType<typeof sourceUniforms>,
  stage: Stage,
  source: Traced,
  sample: number,
  tables: SourceTables,
): void => {
  if (source.kind === 'mask') u.maskPart.value = partNumber(source);
  if (source.kind === 'moon') {
    const { first, second } = basisAround(source.toward);
    u.towardMoon.value.set(...source.toward);
    u.moonFirst.value.set(...first);
    u.moonSecond.value.set(...second);
    u.moonRadius.value = source.radiusRadians;
  }
  if (source.kind === 'dome') setDome(u, domeLightOf(source.of), tables);
  if (source.kind !== 'lamp') return;
  setMoments(u, momentsTaken(stage, source, sample));
  u.lampHalfSize.value.set(source.emitter.halfWidthMetres, source.emitter.halfHeightMetres);
  setBeam(u, source.emitter, tables);
};

/** three's matrix from a row-major one. */
export const matrixFromRows = (m: readonly (readonly [number, number, number])[]): Matrix3 =>
  new Matrix3().set(...(m.flat() as Parameters<Matrix3['set']>));
