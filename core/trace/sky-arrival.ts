import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, basisAround, dot, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import { domeSteps } from '../sky/dome-cells.ts';
import { harmonicLux } from '../sky/dome-harmonics.ts';
import type { DomeLight } from '../sky/dome-light.ts';
import type { Air } from '../world/air.ts';
import { forwardness } from '../world/air-light.ts';
import type { Source } from '../world/world.ts';
import { type Arrival, nothing, type Receiver, type SampleNumbers } from './arrival.ts';
import { scatteredDirection, throughToSky } from './through-air.ts';

type MoonSource = Extract<Source, { kind: 'moon' }>;

const farAway = 1e5;
/**
 * The moon through haze, and what haze by its light sends to the ground: as bright as it is seen, see `airLight`, but on
 * level ground no more than haze takes of the moon. What it sends upward, or scatters again, is left out. A sample takes the
 * moon as often as its light gets through, else a direction of the haze. Sample 0 takes all of it from the moon: of scattered
 * light the share that goes on with it, its mean cosine.
 */
export const moonArrival = (
  air: Air | null,
  { toward, radiusRadians }: MoonSource,
  { place, normal }: Receiver,
  { u, v }: SampleNumbers,
): Arrival => {
  const common = { limit: farAway, lamp: null };
  const straight = throughToSky(air, { origin: place, direction: toward });
  const isMiddle = u === 0.5 && v === 0.5;
  if (isMiddle || u < straight) {
    const { first, second } = basisAround(toward);
    const [a, b] = discFromSquare(isMiddle ? u : u / straight, v).map((x) => x * radiusRadians) as [number, number];
    const toLight = normalize(add(toward, add(scale(first, a), scale(second, b))));
    const share = isMiddle ? straight + (1 - straight) * forwardness : 1;
    return { ...common, lux: Math.max(dot(normal, toLight), 0) * share, toLight, isAllRound: false };
  }
  const toLight = scatteredDirection(toward, (u - straight) / (1 - straight), v);
  if (toLight[1] <= 0) return nothing;
  const seen = 1 - throughToSky(air, { origin: place, direction: toLight });
  const taken = ((1 - straight) * Math.max(toward[1], 0)) / toLight[1];
  const lux = (Math.min(seen, taken) * Math.max(dot(normal, toLight), 0)) / (1 - straight);
  return { ...common, lux, toLight, isAllRound: true };
};

/**
 * An even dome of 1 lux on level ground, sampled by the cosine round the normal. Sample 0 stands for the whole dome: it
 * looks along the normal, or straight up where that is level or below, and weighs by the dome's share above the surface.
 */
export const skyArrival = (normal: Vec3, { u, v }: SampleNumbers): Arrival => {
  const common = { limit: farAway, lamp: null };
  if (u === 0.5 && v === 0.5) {
    const toLight: Vec3 = normal[1] > 0 ? normal : [0, 1, 0];
    return { ...common, lux: Math.max((1 + normal[1]) / 2, 0), toLight, isAllRound: true };
  }
  const toLight = cosineDirection(normal, u, v);
  return { ...common, lux: toLight[1] > 0 ? 1 : 0, toLight, isAllRound: false };
};

/**
 * A sky as it is spread over the dome: one of its directions of equal light, drawn by both numbers. Sample 0 stands for the
 * whole dome as in `skyArrival`, and looks half-way between the normal and where the light comes from on the whole.
 */
export const domeArrival = (dome: DomeLight, normal: Vec3, { u, v }: SampleNumbers): Arrival => {
  const common = { limit: farAway, lamp: null };
  if (u === 0.5 && v === 0.5) {
    const half = add(normal, dome.middle);
    const toLight = dot(half, half) > 0.01 && half[1] > 0 ? normalize(half) : dome.middle;
    return { ...common, lux: harmonicLux(dome.harmonics, normal), toLight, isAllRound: true };
  }
  const at = 3 * (Math.floor(v * domeSteps) * domeSteps + Math.floor(u * domeSteps));
  const { directions } = dome;
  const toLight: Vec3 = [directions[at] as number, directions[at + 1] as number, directions[at + 2] as number];
  return { ...common, lux: dome.luxAllRound * Math.max(dot(normal, toLight), 0), toLight, isAllRound: false };
};

/** A direction over a surface, more often the nearer to its normal: density cos / pi. Two numbers in [0, 1). */
export const cosineDirection = (normal: Vec3, u: number, v: number): Vec3 => {
  const { first, second } = basisAround(normal);
  const r = Math.sqrt(u);
  const around = add(scale(first, r * Math.cos(2 * Math.PI * v)), scale(second, r * Math.sin(2 * Math.PI * v)));
  return normalize(add(scale(normal, Math.sqrt(Math.max(1 - u, 0))), around));
};
