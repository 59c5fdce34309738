import { setCard } from '../../../../app/web/state/edits/card-edits.ts';
import * as domes from '../../../../app/web/state/edits/glow-dome-edits.ts';
import * as ground from '../../../../app/web/state/edits/ground-edits.ts';
import * as hazards from '../../../../app/web/state/edits/hazard-edits.ts';
import * as nights from '../../../../app/web/state/edits/night-edits.ts';
import { removePatch, setPatch } from '../../../../app/web/state/edits/patch-edits.ts';
import * as hours from '../../../../app/web/state/edits/place-and-hour-edits.ts';
import { renameSetup, setBounces, setNightLevel } from '../../../../app/web/state/edits/setup-edits.ts';
import { setWalking } from '../../../../app/web/state/edits/walking-edits.ts';
import { groundPresets, reliefPresets } from '../../../../core/setup/ground-presets.ts';
import type { Relief, Setup } from '../../../../core/setup/schema/setup.ts';
import type { Dice } from './dice.ts';
import { edits, editsPass, type Step, type Steps } from './step.ts';
import { randomFinish } from './subject-steps.ts';

const editsRelief = (change: (relief: Relief, dice: Dice) => Relief): Step =>
  edits((s, _, dice) => {
    const { relief } = s.ground;
    const index = dice.whole(0, relief.length - 1);
    const one = relief[index];
    return one ? ground.changeRelief(s, index, change(one, dice)) : s;
  });

const strewn = (relief: Relief, change: (relief: Extract<Relief, { count: number }>) => Relief): Relief =>
  'count' in relief ? change(relief) : relief;

const editsHazard = (change: (setup: Setup, id: string, dice: Dice) => Setup): Step =>
  edits((s, _, dice) => {
    const hazard = dice.maybe(s.hazards);
    return hazard ? change(s, hazard.id, dice) : s;
  });

const two = (n: number) => String(n).padStart(2, '0');

/** What is done with place, hour, ground, hazards, card and the log of nights. */
export const placeSteps: Steps = {
  coordinates: edits((s, _, dice) => hours.setCoordinates(s, dice.between(-90, 90), dice.between(-180, 180))),
  localTime: edits((s, _, dice) =>
    hours.setLocalTime(
      s,
      `${dice.whole(1900, 2199)}-${two(dice.whole(1, 12))}-${two(dice.whole(1, 28))}T${two(dice.whole(0, 23))}:${two(dice.whole(0, 59))}`,
    ),
  ),
  timeZone: edits((s, _, dice) => hours.setTimeZone(s, dice.one(['Etc/UTC', 'Europe/Oslo', 'Asia/Kathmandu']))),
  north: edits((s, _, dice) => hours.setNorth(s, dice.between(-720, 720))),
  skyOfHour: edits((s, _, dice) =>
    hours.setPlace(s, {
      sky: dice.flag() ? null : { zenithMagnitude: 21.7, extinctionMagnitudes: 0.2, thinCloudDepth: 0 },
    }),
  ),
  sky: edits((s, _, dice) =>
    hours.changeSky(s, {
      zenithMagnitude: dice.between(16, 22.2),
      extinctionMagnitudes: dice.between(0.08, 0.8),
      thinCloudDepth: dice.between(0, 2),
    }),
  ),
  moonlight: edits((s, _, dice) =>
    hours.changeMoonlight(s, {
      bearingDegrees: dice.between(0, 360),
      altitudeDegrees: dice.between(0, 90),
      illuminanceLux: dice.between(0, 1),
    }),
  ),
  noMoonlight: edits((s) => hours.setPlace(s, { moonlight: null })),
  skylight: edits((s, _, dice) => hours.changeSkylight(s, { illuminanceLux: dice.between(0, 1000) })),
  haze: edits((s, _, dice) => hours.setPlace(s, { hazeVisibilityKm: dice.flag() ? null : dice.between(0.05, 300) })),
  addDome: edits((s, _, dice) => domes.addGlowDome(s, dice.between(-400, 400))),
  changeDome: edits((s, _, dice) =>
    domes.changeGlowDome(s, dice.whole(0, 3), {
      name: dice.text(),
      bearingDegrees: dice.between(0, 360),
      widthDegrees: dice.between(0, 180),
      luminanceAt10DegreesCdM2: dice.between(0, 1),
    }),
  ),
  removeDome: edits((s, _, dice) => domes.removeGlowDome(s, dice.whole(0, s.place.glowDomes.length))),
  groundFinish: edits((s, _, dice) => ground.setGroundFinish(s, randomFinish(dice))),
  wholeGround: edits((s, { scheme }, dice) => ground.setWholeGround(s, scheme.id, dice.one(groundPresets))),
  addRelief: edits((s, { scheme }, dice) => ground.addRelief(s, scheme.id, dice.one(reliefPresets))),
  removeRelief: edits((s, _, dice) =>
    s.ground.relief.length > 0 ? ground.removeRelief(s, dice.whole(0, s.ground.relief.length - 1)) : s,
  ),
  reliefSize: editsRelief((relief, dice) => ({ ...relief, radiusMetres: dice.between(0.1, 40) })),
  reliefSeed: editsRelief((relief) => ground.nextOfRelief(relief)),
  reliefCount: editsRelief((relief, dice) => strewn(relief, (it) => ({ ...it, count: dice.whole(0, 300) }))),
  reliefDensity: editsRelief((relief, dice) => strewn(relief, (it) => ground.withDensity(it, dice.one([0, 0.5, 1e6])))),
  reliefHeights: editsRelief((relief, dice) =>
    strewn(relief, (it) => ground.withHeights(it, [dice.between(0.002, 3), dice.between(0.002, 3)])),
  ),
  addHazard: ({ app, scheme }, dice) => {
    let hazardId = '';
    app.getState().edit((s) => {
      const added = hazards.addHazard(s, scheme.id, dice.text());
      hazardId = added.hazardId;
      return added.setup;
    });
    if (hazardId !== '') app.getState().select({ kind: 'hazard', hazardId });
  },
  moveHazard: editsHazard((s, id, dice) => hazards.moveHazard(s, id, dice.place())),
  resizeHazard: editsHazard((s, id, dice) => hazards.resizeHazard(s, id, dice.between(-1, 600))),
  renameHazard: editsHazard((s, id, dice) => hazards.renameHazard(s, id, dice.text())),
  removeHazard: editsHazard((s, id) => hazards.removeHazard(s, id)),
  walking: edits((s, _, dice) =>
    setWalking(s, {
      metresPerSecond: dice.between(0.2, 2),
      clothes: dice.one(['light', 'dark']),
      keepsOutOfPicture: dice.flag(),
    }),
  ),
  card: edits((s, _, dice) =>
    setCard(s, { paper: dice.one(['a4', 'letter']), lengths: dice.one(['metres', 'feet']), permission: dice.text() }),
  ),
  bounces: edits((s, _, dice) => setBounces(s, dice.whole(0, 2))),
  nightLevel: edits((s, _, dice) => setNightLevel(s, dice.between(-4, 1))),
  renameSetup: edits((s, _, dice) => renameSetup(s, dice.text())),
  patch: edits((s, _, dice) => {
    const [east, north, up] = dice.place();
    const corner = (e: number, n: number): [number, number, number] => [east + e, north + n, up];
    return setPatch(s, [corner(0, 0), corner(1, 0), corner(1, 1), corner(0, 1)]);
  }),
  noPatch: edits((s) => removePatch(s)),
  addRun: editsPass((s, _, dice, pass, { scheme, frame }) =>
    nights.addRun(s, dice.maybe(s.nights)?.id ?? null, scheme, {
      at: '2026-10-09T22:30',
      frameId: frame.id,
      frameName: frame.name,
      passId: pass.id,
      passName: pass.name,
      seconds: dice.between(0, 100),
      strokes: 1,
      distanceTimes: dice.one([1, 2, 0.5]),
      hoursMoved: dice.one([0, 1, -2]),
      heightTimes: dice.one([1, 0.5]),
      levelTimes: dice.one([1, 0.5]),
      verdict: dice.one(['good', 'too-bright', 'not-said']),
    }),
  ),
  dropRun: edits((s, _, dice) => nights.dropLastRun(s, dice.maybe(s.nights)?.id ?? '')),
  deleteNight: edits((s, _, dice) => nights.deleteNight(s, dice.share() < 0.3 ? (s.nights[0]?.id ?? '') : '')),
  noteNight: edits((s, _, dice) => nights.noteNight(s, dice.maybe(s.nights)?.id ?? '', dice.text())),
  schemeFromNight: edits((s, _, dice) => {
    const night = dice.maybe(s.nights);
    return night ? nights.schemeFromNight(s, night, [0, 0]).setup : s;
  }),
};
