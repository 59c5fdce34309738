import { validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld, type World, type WorldFrame } from '../../../core/world/world.ts';
import { pebbleSetup } from '../../core/support/pebble-setup.ts';
import { type TracedLight, tracedLights } from './traced-lights.ts';

/** A small torch, a soft panel, a tube. */
export const lampKinds = ['torch', 'panel', 'tube'] as const;
export type LampKind = (typeof lampKinds)[number];

/** What rays are timed for: the cheapest program for light, one of an area, and one of a lamp on its way. */
export const rayCases = ['torch', 'panel', 'walked'] as const;
export type RayCase = (typeof rayCases)[number];

const torch = { kind: 'torch', diameterMm: 35, beam: { shape: 'spot', beamDegrees: 60 } };
const lampOf: Readonly<Record<LampKind | RayCase, object>> = {
  torch,
  walked: torch,
  panel: { kind: 'panel', widthMm: 600, heightMm: 600 },
  tube: { kind: 'tube', lengthMm: 1000, diameterMm: 30 },
};

/** Places beside the picture, left and right in turn, none of them in it: the other tracer shows no bare lamps. */
const placeOf = (i: number): [number, number, number] => {
  const step = [5, 2, 7, 0, 3, 6, 1, 4][(i >> 1) % 8] as number;
  const north = 1.5 + 0.9 * step;
  const east = 0.75 * north + 2.2;
  return [i % 2 === 0 ? east : -east, north, 0.5 + 0.15 * step];
};

/** Metres north that a lamp on its way goes. */
const walkedMetres = 1.5;

const wayOf = (i: number, kind: LampKind | RayCase): [number, number, number][] => {
  const [east, north, up] = placeOf(i);
  return kind === 'walked' ? [placeOf(i), [east, north + walkedMetres, up]] : [placeOf(i)];
};

/** The pebble ground under so many lamps on stands, or walked, all aimed at its middle; nobody is drawn. */
export const litPebbles = (triangles: number, kind: LampKind | RayCase, lamps: number): Setup => {
  const setup = pebbleSetup(triangles, 'finer');
  const passes = Array.from({ length: lamps }, (_, i) => ({
    id: `p${i}`,
    name: `P${i}`,
    lampId: 'lamp',
    off: 5,
    held: kind === 'walked' ? 'hand' : 'stand',
    waypoints: wayOf(i, kind).map((position, time) => ({ position, aim: [0, 9, 0.3], time: 5 * time })),
  }));
  return validateSetup({
    ...setup,
    camera: { ...setup.camera, drawn: { ...setup.camera.drawn, holder: false } },
    lamps: [{ id: 'lamp', name: 'Lamp', output: { from: 'lumens', lumens: 100 }, ...lampOf[kind] }],
    schemes: [{ id: 's', name: 'S', frames: [{ id: 'f', name: 'F', passes }] }],
  });
};

export interface LitScene {
  readonly setup: Setup;
  readonly world: World;
  readonly frame: WorldFrame;
  /** Lamps alone. */
  readonly lights: readonly TracedLight[];
  readonly triangles: number;
}

/** The world of a setup’s only scheme and frame. */
export const sceneOf = (setup: Setup): LitScene => {
  const [scheme] = setup.schemes;
  if (!scheme) throw new Error('a setup without a scheme');
  const world = buildWorld(setup, scheme);
  const [frame] = world.frames;
  if (!frame) throw new Error('a scheme without a frame');
  const lights = tracedLights(frame).filter(({ source }) => source.kind === 'lamp');
  return { setup, world, frame, lights, triangles: world.stage.tree.corners.length / 9 };
};
