import { dot, sub, type Vec3 } from '../geometry/vec.ts';
import type { DepthReading } from '../readings/depth-reading.ts';
import { middleMoment } from '../readings/moments.ts';
import { sightOf } from '../readings/sight.ts';
import { targetSurface } from '../readings/target-reading.ts';
import type { StageSubject } from '../world/stage.ts';
import type { Caution, FrameCase, SchemeCase, SchemeRule } from './caution.ts';

type Told = Caution & { readonly frameId: string };

const metres = (value: number): string => value.toFixed(value < 100 ? 1 : 0);
const isSharp = ({ nearMetres, farMetres }: DepthReading, at: number): boolean =>
  at >= nearMetres && (farMetres === null || at <= farMetres);
const rangeText = ({ nearMetres, farMetres }: DepthReading): string =>
  `from ${metres(nearMetres)} m to ${farMetres === null ? 'infinity' : `${metres(farMetres)} m`}`;
/** The limit that is passed. */
const passed = ({ nearMetres, farMetres }: DepthReading, at: number): number =>
  at < nearMetres || farMetres === null ? nearMetres : farMetres;

/** One focus distance that makes all sharp, where there is one; else the ways there are. */
const advice = ({ steps, complete }: DepthReading): string => {
  const only = complete && steps.length === 1 ? steps[0]?.focusMetres : null;
  return only ? `Focus at ${metres(only)} m.` : 'Focus on it, stop down, or give it a frame of its own.';
};

/** Distance along the lens's axis, as focus is set. */
const depthOf = ({ world: { view } }: SchemeCase, place: Vec3): number => dot(sub(place, view.position), view.forward);

/** Targets that their own frame does not have sharp: what is lit there is soft. */
const softTargets = (schemeCase: SchemeCase, { frame, depth, passes }: FrameCase): Told[] =>
  passes.flatMap(({ pass, light }) => {
    const { stage, view } = schemeCase.world;
    const surface = targetSurface(stage, view.position, middleMoment(light).aim);
    if (!surface || !depth) return [];
    const value = depthOf(schemeCase, surface.position);
    if (isSharp(depth, value)) return [];
    return [
      {
        code: 'out-of-depth',
        severity: 'warning',
        passId: pass.id,
        frameId: frame.id,
        message: `${pass.name}: its target is ${metres(value)} m away and soft; this frame is sharp ${rangeText(depth)}. ${advice(depth)}`,
        value,
        limit: passed(depth, value),
      },
    ];
  });

/** The nearest point that is seen of the subjects that passes are about. */
const nearestLit = (
  schemeCase: SchemeCase,
): { readonly name: string; readonly at: number; readonly lit: FrameCase } | null => {
  const { stage, view } = schemeCase.world;
  let nearest: { name: string; at: number; lit: FrameCase } | null = null;
  for (const lit of schemeCase.frames)
    for (const { reading } of lit.passes) {
      const index = stage.subjects.findIndex(({ id }) => id === reading.rim.subjectId);
      for (const { point } of sightOf(stage, view).silhouette(index).face) {
        const at = depthOf(schemeCase, point.position);
        if (!nearest || at < nearest.at) nearest = { name: (stage.subjects[index] as StageSubject).name, at, lit };
      }
    }
  return nearest;
};

/** A target is soft in its frame, or, where all are sharp, the near part of what is lit is soft in every frame. */
export const outOfDepth: SchemeRule = (schemeCase) => {
  const { frames } = schemeCase;
  const targets = frames.flatMap((each) => softTargets(schemeCase, each));
  if (targets.length > 0) return targets;
  const nearest = nearestLit(schemeCase);
  const depth = nearest?.lit.depth;
  if (!nearest || !depth || frames.some((each) => each.depth && isSharp(each.depth, nearest.at))) return [];
  const { name, at: value, lit } = nearest;
  return [
    {
      code: 'out-of-depth',
      severity: 'note',
      frameId: lit.frame.id,
      message: `${lit.frame.name}: the near part of “${name}”, ${metres(value)} m away, is soft; this frame is sharp ${rangeText(depth)}. ${advice(depth)}`,
      value,
      limit: passed(depth, value),
    },
  ];
};
