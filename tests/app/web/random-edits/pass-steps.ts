import { addLampWithPass } from '../../../../app/web/inspector/add-lamp-with-pass.ts';
import { newLamps } from '../../../../app/web/inspector/new-lamps.ts';
import { reshapeBeam } from '../../../../app/web/inspector/reshape-beam.ts';
import * as lamps from '../../../../app/web/state/edits/lamp-edits.ts';
import { type OutputFrom, outputFrom, outputRanges } from '../../../../app/web/state/edits/lamp-output.ts';
import { addTestShot, forgetTestShots, removeTestShot } from '../../../../app/web/state/edits/lamp-shots.ts';
import * as passes from '../../../../app/web/state/edits/pass-edits.ts';
import { movePassEdge } from '../../../../app/web/state/edits/pass-times.ts';
import * as paths from '../../../../app/web/state/edits/path-edits.ts';
import * as points from '../../../../app/web/state/edits/waypoint-edits.ts';
import type { Beam, Lamp, Setup } from '../../../../core/setup/schema/setup.ts';
import type { Dice } from './dice.ts';
import { edits, editsPass, type Steps } from './step.ts';

const kinds = Object.keys(newLamps) as Lamp['kind'][];
const outputs = Object.keys(outputRanges) as OutputFrom[];
const shapes: readonly Beam['shape'][] = ['spot', 'flood', 'lobe', 'open', 'even', 'measured'];

/** An edit of some lamp of the bag. */
const editsLamp = (change: (setup: Setup, lamp: Lamp, dice: Dice) => Setup) =>
  edits((setup, _, dice) => {
    const lamp = dice.maybe(setup.lamps);
    return lamp ? change(setup, lamp, dice) : setup;
  });

const beamOf = (beam: Beam, dice: Dice): Beam => {
  if (beam.shape === 'spot')
    return {
      ...beam,
      beamDegrees: dice.between(1, 170),
      spillDegrees: dice.between(1, 180),
      spillShare: dice.between(0, 100) / 100,
    };
  if (beam.shape === 'flood' || beam.shape === 'lobe') return { ...beam, degrees: dice.between(1, 170) };
  return beam;
};

/** What is done with lamps and their passes, numbers as the fields of their slip take them. */
export const passSteps: Steps = {
  addLamp: ({ app, setup, scheme, frame }, dice) => {
    if (setup.lamps.length >= 64 || frame.passes.length >= 64) return;
    const added = addLampWithPass(setup, scheme, frame, dice.one(kinds));
    app.getState().edit(() => added.setup);
    app.getState().select({ kind: 'pass', frameId: frame.id, passId: added.passId });
  },
  movePass: editsPass((s, place, dice) => passes.movePass(s, place, dice.place())),
  aimPass: editsPass((s, place, dice) => passes.aimPass(s, place, dice.place())),
  passSeconds: editsPass((s, place, dice, _, { frame }) =>
    passes.setPassSeconds(s, place, dice.between(Math.min(0.01, frame.seconds), frame.seconds)),
  ),
  passLevel: editsPass((s, place, dice) => passes.setPassLevel(s, place, dice.between(0, 100))),
  passGels: editsPass((s, place, dice) =>
    passes.setPassGels(
      s,
      place,
      Array.from({ length: dice.whole(0, 10) }, () => ({
        name: 'Gel',
        shiftMired: dice.between(-500, 500),
        transmission: dice.between(0, 100) / 100,
        colour: dice.flag() ? null : ([dice.share(), dice.share(), dice.share()] as [number, number, number]),
      })),
    ),
  ),
  passCloth: editsPass((s, place, dice) =>
    passes.setPassCloth(
      s,
      place,
      dice.flag() ? null : { stops: dice.between(0, 16), spreadShare: dice.between(0, 100) / 100 },
    ),
  ),
  passSnoot: editsPass((s, place, dice) => passes.setPassSnoot(s, place, dice.flag() ? null : dice.between(1, 180))),
  passName: editsPass((s, place, dice) => passes.setPassName(s, place, dice.text())),
  passHeld: editsPass((s, place, dice) => passes.setPassHeld(s, place, dice.one(['hand', 'stand']))),
  passLamp: editsPass((s, place, dice) => passes.setPassLamp(s, place, dice.one(s.lamps).id)),
  duplicatePass: editsPass((s, place) => passes.duplicatePass(s, place)),
  removePass: editsPass((s, place) => passes.removePass(s, place)),
  passEdge: editsPass((s, place, dice, _, { frame }) =>
    movePassEdge(s, place, dice.one(['on', 'off', 'whole']), dice.between(-1, frame.seconds + 1)),
  ),
  pathKind: editsPass((s, place, dice) => paths.setPathKind(s, place, dice.one(['still', 'sweep', 'walk']))),
  addWaypoint: editsPass((s, place, dice, pass) =>
    points.addWaypoint(s, place, dice.whole(0, pass.waypoints.length - 1)),
  ),
  // paths of three places and more are rare: any of the setup will do
  removeWaypoint: edits((s, _, dice) => {
    const long = s.schemes.flatMap((scheme) =>
      scheme.frames.flatMap((frame) =>
        frame.passes
          .filter(({ waypoints }) => waypoints.length > 2)
          .map((pass) => ({ schemeId: scheme.id, frameId: frame.id, passId: pass.id })),
      ),
    );
    const place = dice.maybe(long);
    return place ? points.removeWaypoint(s, place, dice.whole(0, 2)) : s;
  }),
  moveWaypoint: editsPass((s, place, dice, pass) =>
    points.moveWaypoint(s, place, dice.whole(0, pass.waypoints.length - 1), dice.place()),
  ),
  aimWaypoint: editsPass((s, place, dice, pass) =>
    points.aimWaypoint(s, place, dice.whole(0, pass.waypoints.length - 1), dice.place()),
  ),
  timeWaypoint: editsPass((s, place, dice, pass) =>
    points.timeWaypoint(s, place, dice.whole(0, pass.waypoints.length - 1), dice.between(pass.on, pass.off)),
  ),
  strokes: editsPass((s, place, dice) => paths.setStrokes(s, place, dice.whole(1, 64))),
  dwell: editsPass((s, place, dice) => paths.setDwell(s, place, dice.one(['typed', 'even-speed']))),
  paintSweep: editsPass((s, place, dice) =>
    paths.paintSweep(
      s,
      place,
      Array.from({ length: dice.whole(1, 9) }, () => dice.place()),
    ),
  ),
  lampName: editsLamp((s, { id }, dice) => lamps.setLampName(s, id, dice.text())),
  lampKelvin: editsLamp((s, { id }, dice) => lamps.setLampKelvin(s, id, dice.between(1667, 25000))),
  lowestLevel: editsLamp((s, { id }, dice) => lamps.setLowestLevel(s, id, dice.between(0, 100))),
  lampSize: editsLamp((s, { id }, dice) =>
    lamps.setLampSize(s, id, dice.one(['diameterMm', 'widthMm', 'heightMm', 'lengthMm']), dice.between(1, 5000)),
  ),
  lampOutput: editsLamp((s, { id }, dice) => {
    const from = dice.one(outputs);
    const told = outputFrom(from, dice.between(outputRanges[from].min, outputRanges[from].max));
    return (from === 'lux-at-1-metre' ? lamps.setLampLux : lamps.setLampOutput)(s, id, told);
  }),
  restateOutput: editsLamp((s, { id }, dice) => lamps.restateLampOutput(s, id, dice.one([...outputs, 'measured']))),
  beamShape: editsLamp((s, lamp, dice) => {
    const beam = reshapeBeam(lamp, dice.one(shapes), s.measuredBeams);
    return beam ? lamps.setLampBeam(s, lamp.id, beam) : s;
  }),
  beamAngles: editsLamp((s, lamp, dice) =>
    'beam' in lamp ? lamps.setLampBeam(s, lamp.id, beamOf(lamp.beam, dice)) : s,
  ),
  addShot: editsLamp((s, { id }, dice) =>
    addTestShot(s, id, { at: '2026-10-09T22:30', stops: dice.between(-9, 9), uncertaintyStops: dice.between(0, 3) }),
  ),
  removeShot: edits((s, _, dice) => {
    const lamp = s.lamps.find(({ testShots }) => testShots.length > 0);
    return lamp ? removeTestShot(s, lamp.id, dice.whole(0, lamp.testShots.length - 1)) : s;
  }),
  forgetShots: editsLamp((s, { id }) => forgetTestShots(s, id)),
};
