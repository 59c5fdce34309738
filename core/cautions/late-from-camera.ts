import { cameraFeet } from '../readings/camera-feet.ts';
import { isSetByHand, leavesCameraAt } from '../readings/set-off.ts';
import { turnsOf } from '../readings/timing-reading.ts';
import { wayOnFoot } from '../readings/way-on-foot.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';

/** A frame that is set by hand, and too little delay to walk from the camera to the first lamp that is held after. */
export const lateFromCamera: SchemeRule = ({ setup, scheme, world }) => {
  const turns = turnsOf(scheme, world);
  return scheme.frames.flatMap((set, f) => {
    const at = leavesCameraAt(scheme, set);
    const turn = turns.find(({ frame }) => frame === set || scheme.frames.indexOf(frame) > f);
    if (!turn || !isSetByHand(scheme, f) || leavesCameraAt(scheme, turn.frame) !== at) return [];
    const walk = wayOnFoot(cameraFeet(world), turn.startFeet, setup, world);
    const limit = turn.startSeconds - at;
    if (!walk || walk.metres < limits.stepMetres || walk.seconds <= limit) return [];
    const delay = Math.ceil(set.delaySeconds + walk.seconds - limit);
    const before = scheme.frames[f - 1]?.name;
    return [
      {
        code: 'late-from-camera',
        severity: 'warning' as const,
        passId: turn.pass.id,
        frameId: turn.frame.id,
        message: `${turn.pass.name}: “${set.name}” is set otherwise than “${before}”, so you leave the camera as its delay begins. ${Math.round(walk.metres)} m to walk, ${Math.round(walk.seconds)} s; you have ${Number(limit.toFixed(1))} s. Make the delay ${delay} s, let a helper hold the lamp, or put it on a stand.`,
        value: walk.seconds,
        limit,
      },
    ];
  });
};
