import { isInFrame } from '../camera/camera-view.ts';
import { midGreyRatioPerLuminanceSecond } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { add, distance, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { emitterSpot } from '../photometry/emitter.ts';
import type { Frame, Pass, Walking } from '../setup/schema/setup.ts';
import { directLuminance, look } from '../trace/direct-light.ts';
import { meterReceiver } from '../trace/meter.ts';
import { metresBefore } from '../trace/through-air.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { exactSeconds } from '../units/third-stops.ts';
import { body, isInTheWay } from '../walk/body.ts';
import { throughAir } from '../world/air.ts';
import { airLight } from '../world/air-light.ts';
import { poseAt, type World, type WorldFrame, type WorldLight } from '../world/world.ts';
import { hiddenSubject } from './hidden-subject.ts';
import { isSeen, type LampSource, mostAtOnePlace, pictureShare, reach, type SeenBody, seenBody } from './seen-body.ts';

/** What the lens sees of whoever holds a pass's lamp. */
export interface PersonReading {
  /** How long any of the body is in the picture with nothing in front, while the lamp is on. */
  readonly visibleSeconds: number;
  /** That as a share of the exposure, 0 to 1. */
  readonly exposureShare: number;
  /** Longest share of the exposure that the body is seen at one place of the picture: less when the lamp is walked. */
  readonly stillShare: number;
  /** Most of the picture that is seen of the body at a moment, 0 to 1. */
  readonly frameShare: number;
  /** How long the body stands right before the lens, or in its place: it hides the picture. */
  readonly atLensSeconds: number;
  /** Subject that the body hides most of, where a fifth of either stands before or behind the other; null = none. */
  readonly hidesId: string | null;
  /** Share of that subject’s seen skin that is hidden, 0 to 1. */
  readonly hiddenShare: number;
  /** How long the lens sees the middle of the bare lamp, past the body too. */
  readonly lampSeconds: number;
  /**
   * Level of the body while the lamp is on, and of what lies behind it, the brightest eighth left out, in the whole exposure:
   * from mid-grey; null = dark or unseen.
   */
  readonly bodyStops: number | null;
  readonly backgroundStops: number | null;
}

/** All that belongs to a pass whose lamp somebody holds. */
export interface HeldPass {
  readonly pass: Pass;
  readonly frame: Frame;
  readonly worldFrame: WorldFrame;
  readonly light: WorldLight;
  readonly clothes: Walking['clothes'];
}

/** Moments of a moving pass that are looked at. */
const momentCount = 17;
/** Places of a body behind which is metered, and every how many of them its own light is; samples of each light there. */
const meteredCells = 24;
const cellsPerLight = 4;
const meterSamples = 4;

/** Whether the lens sees the middle of the lamp, with neither things nor its holder before it. */
const seesLamp = ({ stage, view }: World, source: LampSource, share: number, feet: Vec3): boolean => {
  const { spot } = emitterSpot(source.emitter, poseAt(source, share), 0.5, 0.5);
  const eye = view.position;
  if (!isInFrame(view, spot) || isInTheWay(feet, eye, spot)) return false;
  return !anyHit(stage.tree, eye, normalize(sub(spot, eye)), distance(spot, eye) * reach);
};

/** How long a light shines while a pass is on. */
const sharedSeconds = (frame: Frame, pass: Pass, { id, source }: WorldLight): number => {
  if (source.kind !== 'lamp') return pass.off - pass.on;
  const other = frame.passes.find((each) => each.id === id) as Pass;
  return Math.max(Math.min(pass.off, other.off) - Math.max(pass.on, other.on), 0);
};

/** Mean of all numbers but the largest eighth: a strip of lit ground behind one’s feet tells nobody from the night. */
const meanOfMost = (numbers: readonly number[]): number => {
  const most = [...numbers].sort((a, b) => a - b).slice(0, Math.ceil((7 / 8) * numbers.length));
  return most.reduce((sum, number) => sum + number, 0) / most.length;
};

/** Levels of a body and of what lies behind it, stops from mid-grey. */
const levelsOf = (world: World, held: HeldPass, { feet, across, cells }: SeenBody) => {
  const { stage, view } = world;
  const { frame, pass, worldFrame, clothes } = held;
  const reflectance = body.reflectance[clothes];
  const eye = view.position;
  const toEye = normalize([eye[0] - feet[0], 0, eye[2] - feet[2]]);
  const count = Math.min(meteredCells, cells.length);
  const some = Array.from({ length: count }, (_, k) => cells[Math.floor(((k + 0.5) * cells.length) / count)] as Vec3);
  const behind: number[] = [];
  let [onBody, litCells] = [0, 0];
  for (const [k, cell] of some.entries()) {
    const isLitHere = k % cellsPerLight === Math.min(cellsPerLight / 2, count - 1);
    if (isLitHere) litCells++;
    let behindHere = 0;
    const out = (cell[0] - feet[0]) * across[0] + (cell[2] - feet[2]) * across[2];
    const front = Math.sqrt(Math.max(body.radiusMetres ** 2 - out ** 2, 0));
    const place = add(cell, scale(toEye, front));
    const normal = normalize(add(scale(across, out), scale(toEye, front)));
    const receiver = { place, normal, shadowOrigin: place };
    const ray = { origin: eye, direction: normalize(sub(cell, eye)) };
    const seen = look(stage, ray, null);
    const through = throughAir(stage.air, metresBefore(stage.air, ray, distance(place, eye)));
    for (const light of worldFrame.lights) {
      const strength = luminanceOfLinearSrgb(light.strength);
      if (isLitHere) {
        const lux = strength * meterReceiver(stage, light.source, receiver, meterSamples);
        // with the light of moon and sky that haze before it sends
        const before = strength * airLight(light.source, ray.direction, through);
        onBody += ((lux * reflectance * through) / Math.PI + before) * sharedSeconds(frame, pass, light);
      }
      const [r, g, b] = directLuminance(stage, light.source, seen, { u: 0.5, v: 0.5, time: 0.5 });
      const [sr, sg, sb] = light.strength;
      behindHere += luminanceOfLinearSrgb([r * sr, g * sg, b * sb]) * light.seconds;
    }
    behind.push(behindHere);
  }
  const stops = (mean: number) =>
    mean > 0 ? stopsFromRatio(mean * midGreyRatioPerLuminanceSecond(worldFrame.exposure)) : null;
  return { bodyStops: stops(onBody / litCells), backgroundStops: stops(meanOfMost(behind)) };
};

/** Looks for whoever holds a lamp; null for a lamp on a stand. */
export const personReading = (world: World, held: HeldPass): PersonReading | null => {
  const { light, pass, frame } = held;
  const { source } = light;
  if (pass.held !== 'hand' || source.kind !== 'lamp') return null;
  const moments = source.path.length > 1 ? momentCount : 1;
  const shares = Array.from({ length: moments }, (_, i) => (i + 0.5) / moments);
  const bodies = shares.map((share) => seenBody(world, source, share));
  const exposureSeconds = exactSeconds(frame.seconds);
  const secondsOf = (count: number) => (light.seconds * count) / moments;
  const visibleSeconds = secondsOf(bodies.filter(isSeen).length);
  const covered = bodies.map((each) => pictureShare(world, each));
  // one right before the lens tells nothing of the rest of a walk
  const inSight = covered.map((share, i) => ((bodies[i] as SeenBody).isAtLens ? 0 : share));
  const largest = bodies[inSight.indexOf(Math.max(...inSight))] as SeenBody;
  const lampCount = shares.filter((share, i) => seesLamp(world, source, share, (bodies[i] as SeenBody).feet)).length;
  const isInSight = !largest.isAtLens && largest.cells.length > 0;
  const levels = isInSight ? levelsOf(world, held, largest) : { bodyStops: null, backgroundStops: null };
  const hidden = isInSight ? hiddenSubject(world, largest) : null;
  return {
    visibleSeconds,
    exposureShare: visibleSeconds / exposureSeconds,
    stillShare: secondsOf(mostAtOnePlace(world.view.position, bodies)) / exposureSeconds,
    frameShare: Math.max(...covered),
    atLensSeconds: secondsOf(bodies.filter(({ isAtLens }) => isAtLens).length),
    hidesId: hidden?.id ?? null,
    hiddenShare: hidden?.hiddenShare ?? 0,
    lampSeconds: secondsOf(lampCount),
    ...levels,
  };
};
