import { finishNamed } from './finish-presets.ts';
import { countForDensity } from './relief-detail.ts';
import type { Finish, Ground, Relief } from './schema/setup.ts';

/** A relief by a plain word. Its numbers are common sizes of such ground, no published source. */
export interface ReliefPreset {
  readonly id: string;
  readonly label: string;
  /** Round the origin; put it where it is wanted. */
  readonly relief: Relief;
}

const spread = (radiusMetres: number, finish: Finish | null) =>
  ({ centre: [0, 0], radiusMetres, finish, seed: 1 }) satisfies Partial<Relief>;

type StrewnKind = Extract<Relief, { count: number }>['kind'];
type SheetKind = Exclude<Relief, { count: number }>['kind'];

const strewn = (
  kind: StrewnKind,
  perSquareMetre: number,
  heightMetres: [number, number],
  radiusMetres: number,
  finish: Finish | null = null,
): Relief => ({
  kind,
  count: countForDensity(perSquareMetre, radiusMetres),
  heightMetres,
  ...spread(radiusMetres, finish),
  centre: [0, 0],
});

const sheet = (
  kind: SheetKind,
  heightMetres: number,
  spacingMetres: number,
  radiusMetres: number,
  finish: Finish | null = null,
): Relief => ({
  kind,
  heightMetres,
  spacingMetres,
  bearingDegrees: 70,
  ...spread(radiusMetres, finish),
  centre: [0, 0],
});

/** Reliefs to start from, each about 30,000 triangles at most. */
export const reliefPresets: readonly ReliefPreset[] = [
  { id: 'gravel', label: 'Gravel', relief: strewn('gravel', 190, [0.008, 0.045], 2.5) },
  { id: 'stones', label: 'Loose stones', relief: strewn('stones', 2.5, [0.04, 0.28], 8) },
  { id: 'pebbles', label: 'Pebbles', relief: strewn('pebbles', 36, [0.01, 0.06], 3) },
  { id: 'tufts', label: 'Grass tufts', relief: strewn('tufts', 8, [0.06, 0.25], 6) },
  { id: 'ripples', label: 'Sand ripples', relief: sheet('ripples', 0.015, 0.14, 5) },
  { id: 'drifts', label: 'Snow drifts', relief: sheet('drifts', 0.25, 1.6, 9) },
  { id: 'cracks', label: 'Cracked mud', relief: sheet('cracks', 0.03, 0.3, 3.6) },
  { id: 'pool', label: 'Standing water', relief: sheet('pool', 0, 0.3, 2.5, finishNamed('water')) },
];

const reliefNamed = (id: string): Relief => (reliefPresets.find((each) => each.id === id) as ReliefPreset).relief;

/** A whole ground by one word. */
export interface GroundPreset {
  readonly label: string;
  readonly ground: Ground;
}

export const groundPresets: readonly GroundPreset[] = [
  { label: 'Grass', ground: { finish: finishNamed('grass'), relief: [reliefNamed('tufts')] } },
  { label: 'Gravel', ground: { finish: finishNamed('gravel'), relief: [reliefNamed('gravel')] } },
  { label: 'Sand', ground: { finish: finishNamed('sand'), relief: [reliefNamed('ripples')] } },
  { label: 'Snow', ground: { finish: finishNamed('fresh-snow'), relief: [reliefNamed('drifts')] } },
  { label: 'Mud', ground: { finish: finishNamed('dry-mud'), relief: [reliefNamed('cracks')] } },
  { label: 'Water', ground: { finish: finishNamed('water'), relief: [] } },
  { label: 'Bare rock', ground: { finish: finishNamed('granite'), relief: [reliefNamed('stones')] } },
];
