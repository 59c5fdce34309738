import { isInFrame } from '../camera/camera-view.ts';
import { midGreyRatioPerLuminanceSecond } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { anyHit, closestHit } from '../geometry/cast-ray.ts';
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
import { type LampSource, mostAtOnePlace, pictureShare, reach, type SeenBody, seenBody } from './seen-body.ts';

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
  /** Subject that the body hides most of, where a fifth of either stands before or behind the other; null = none. */
  readonly hidesId: string | null;
  /** How long the lens sees the middle of the bare lamp, past the body too. */
  readonly lampSeconds: number;
  /** Level of the body while the lamp is on, and of what lies behind it in the whole exposure: from mid-grey; null = dark or unseen. */
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
/** Places on a body where its light, and what lies behind, is metered; samples of each light there. */
const meteredCells = 6;
const meterSamples = 4;
/** Points of a subject’s skin that are looked at; share of it, or of a body before it, from which on it counts as hidden. */
const skinPoints = 60;
const hidingShare = 0.2;

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

/** Levels of a body and of what lies behind it, stops from mid-grey. */
const levelsOf = (world: World, held: HeldPass, { feet, across, cells }: SeenBody) => {
  const { stage, view } = world;
  const { frame, pass, worldFrame, clothes } = held;
  const reflectance = body.reflectance[clothes];
  const eye = view.position;
  const toEye = normalize([eye[0] - feet[0], 0, eye[2] - feet[2]]);
  const some = Array.from({ length: Math.min(meteredCells, cells.length) }, (_, k) =>
    Math.floor(((k + 0.5) * cells.length) / Math.min(meteredCells, cells.length)),
  ).map((c) => cells[c] as Vec3);
  let [onBody, behind] = [0, 0];
  for (const cell of some) {
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
      const lux = strength * meterReceiver(stage, light.source, receiver, meterSamples);
      // with the light of moon and sky that haze before it sends
      const before = strength * airLight(light.source, ray.direction, through);
      onBody += ((lux * reflectance * through) / Math.PI + before) * sharedSeconds(frame, pass, light);
      const [r, g, b] = directLuminance(stage, light.source, seen, { u: 0.5, v: 0.5, time: 0.5 });
      const [sr, sg, sb] = light.strength;
      behind += luminanceOfLinearSrgb([r * sr, g * sg, b * sb]) * light.seconds;
    }
  }
  const stops = (sum: number) =>
    sum > 0 ? stopsFromRatio((sum / some.length) * midGreyRatioPerLuminanceSecond(worldFrame.exposure)) : null;
  return { bodyStops: stops(onBody), backgroundStops: stops(behind) };
};

/** Share of a subject that a body hides, by points of its skin that the lens sees. */
const hiddenShareOf = ({ stage, view }: World, feet: Vec3, points: Float64Array): number => {
  const eye = view.position;
  const step = 3 * Math.max(Math.floor(points.length / 3 / skinPoints), 1);
  let [seen, hidden] = [0, 0];
  for (let at = 0; at + 2 < points.length; at += step) {
    const point: Vec3 = [points[at] as number, points[at + 1] as number, points[at + 2] as number];
    const way = sub(point, eye);
    if (!isInFrame(view, point) || anyHit(stage.tree, eye, normalize(way), distance(point, eye) * reach)) continue;
    seen++;
    if (isInTheWay(feet, eye, point)) hidden++;
  }
  return hidden / Math.max(seen, 1);
};

/** Share of a body that stands before each subject. */
const beforeShares = (
  { stage, view: { position: eye } }: World,
  cells: readonly Vec3[],
): ReadonlyMap<string, number> => {
  const shares = new Map<string, number>();
  for (const cell of cells) {
    const hit = closestHit(stage.tree, eye, normalize(sub(cell, eye)));
    const id = hit && stage.subjects[stage.subjectOfTriangle[hit.triangle] as number]?.id;
    if (id) shares.set(id, (shares.get(id) ?? 0) + 1 / cells.length);
  }
  return shares;
};

/** The subject that a body hides most of: much of the body stands before it, or much of it lies behind the body. */
const hiddenSubject = (world: World, { feet, cells }: SeenBody): string | null => {
  if (cells.length === 0) return null;
  const before = beforeShares(world, cells);
  const found = world.stage.subjects
    .filter(({ id }) => before.has(id))
    .map(({ id, points }) => ({ id, share: Math.max(before.get(id) as number, hiddenShareOf(world, feet, points)) }))
    .sort((one, other) => other.share - one.share)[0];
  return found && found.share >= hidingShare ? found.id : null;
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
  const visibleSeconds = secondsOf(bodies.filter(({ cells }) => cells.length > 0).length);
  const largest = bodies.reduce((a, b) => (b.cells.length > a.cells.length ? b : a));
  const lampCount = shares.filter((share, i) => seesLamp(world, source, share, (bodies[i] as SeenBody).feet)).length;
  const covered = bodies.map(({ cells, across }) =>
    cells.reduce((sum, cell) => sum + pictureShare(world, cell, across), 0),
  );
  const levels = largest.cells.length > 0 ? levelsOf(world, held, largest) : { bodyStops: null, backgroundStops: null };
  return {
    visibleSeconds,
    exposureShare: visibleSeconds / exposureSeconds,
    stillShare: secondsOf(mostAtOnePlace(world.view.position, bodies)) / exposureSeconds,
    frameShare: Math.min(Math.max(...covered), 1),
    hidesId: hiddenSubject(world, largest),
    lampSeconds: secondsOf(lampCount),
    ...levels,
  };
};
