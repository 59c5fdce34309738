import * as blends from '../../../../app/web/state/edits/blend-edits.ts';
import * as placing from '../../../../app/web/state/edits/camera-placing.ts';
import * as compare from '../../../../app/web/state/edits/compare-edits.ts';
import { focusFrames } from '../../../../app/web/state/edits/focus-frames.ts';
import * as frames from '../../../../app/web/state/edits/frame-edits.ts';
import * as list from '../../../../app/web/state/edits/frame-list.ts';
import { lightBy } from '../../../../app/web/state/edits/light-by.ts';
import * as places from '../../../../app/web/state/edits/place-edits.ts';
import { splitFrame } from '../../../../app/web/state/edits/split-frame.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';
import type { Dice } from './dice.ts';
import { edits, editsPass, type Step, type Steps } from './step.ts';

const ranges: Readonly<Record<frames.FrameNumber, readonly [number, number]>> = {
  aperture: [0.7, 64],
  seconds: [1 / 8000, 36000],
  iso: [25, 409600],
  focusMetres: [0.05, 10000],
  delaySeconds: [0, 3600],
};
const sensor = {
  widthMm: [1, 120],
  heightMm: [1, 120],
  pixelsWide: [100, 30000],
  pixelsHigh: [100, 30000],
  fullWellElectrons: [500, 1e6],
  baseIso: [25, 3200],
  readNoiseElectrons: [0, 100],
} as const;

const secondsOf = (dice: Dice) => (dice.flag() ? dice.between(...ranges.seconds) : dice.between(1, 40));

/** A scheme that is made is chosen, as the page does. */
const makesScheme =
  (make: (setup: Setup, schemeId: string, dice: Dice) => { setup: Setup; schemeId: string | undefined }): Step =>
  ({ app, scheme }, dice) => {
    let made: string | undefined;
    app.getState().edit((setup) => {
      const result = make(setup, scheme.id, dice);
      made = result.schemeId;
      return result.setup;
    });
    if (made) app.getState().chooseScheme(made);
  };

const makesFrame =
  (make: (setup: Setup, place: { schemeId: string; frameId: string }, dice: Dice) => list.WithFrame): Step =>
  ({ app, framePlace }, dice) => {
    let made = framePlace.frameId;
    app.getState().edit((setup) => {
      const result = make(setup, framePlace, dice);
      made = result.frameId;
      return result.setup;
    });
    app.getState().chooseFrame(made);
  };

/** What is done with frames, schemes, blends and the camera. */
export const frameSteps: Steps = {
  frameNumber: edits((s, { framePlace }, dice) => {
    const field = dice.one(Object.keys(ranges) as frames.FrameNumber[]);
    return frames.setFrameNumber(
      s,
      framePlace,
      field,
      field === 'seconds' ? secondsOf(dice) : dice.between(...ranges[field]),
    );
  }),
  likeFrames: edits((s, { framePlace }, dice) => {
    const seconds = secondsOf(dice);
    const ids = s.schemes.map(({ id }) => id);
    return compare.changeLikeFrames(s, framePlace, ids, (next, place) =>
      frames.setFrameNumber(next, place, 'seconds', seconds),
    );
  }),
  exposureAlike: edits((s, { scheme }) =>
    compare.makeExposureAlike(
      s,
      scheme.id,
      s.schemes.map(({ id }) => id),
    ),
  ),
  whiteBalance: edits((s, { framePlace }, dice) => frames.setWhiteBalance(s, framePlace, dice.between(2000, 12000))),
  tint: edits((s, { framePlace }, dice) => frames.setTint(s, framePlace, dice.between(-5, 5))),
  focusAt: edits((s, { framePlace }, dice) =>
    frames.focusAt(s, framePlace, dice.flag() ? null : dice.between(0.01, 12000)),
  ),
  addFrame: makesFrame((s, place, dice) => list.addFrame(s, place, dice.one(['sky', 'land', 'painted']))),
  duplicateFrame: makesFrame((s, place) => list.duplicateFrame(s, place)),
  renameFrame: edits((s, { framePlace }, dice) => list.renameFrame(s, framePlace, dice.text())),
  moveFrame: edits((s, { framePlace }, dice) => list.moveFrame(s, framePlace, dice.whole(-1, 9))),
  removeFrame: edits((s, { framePlace }) => list.removeFrame(s, framePlace)),
  focusFrames: edits((s, { framePlace }, dice) =>
    focusFrames(s, framePlace, [dice.between(0.3, 5), dice.between(5, 50), null].slice(dice.whole(0, 2))),
  ),
  splitFrame: editsPass((s, place, dice) => splitFrame(s, place, dice.between(0, 60))),
  duplicateScheme: makesScheme((s, id) => frames.duplicateScheme(s, id)),
  renameScheme: edits((s, { scheme }, dice) => frames.renameScheme(s, scheme.id, dice.text())),
  removeScheme: edits((s, { scheme }) => frames.removeScheme(s, scheme.id)),
  removeOtherScheme: edits((s, _, dice) => frames.removeScheme(s, dice.one(s.schemes).id)),
  moveScheme: edits((s, { scheme }, dice) => compare.moveScheme(s, scheme.id, dice.whole(-1, 9))),
  lensSchemes: edits((s, { scheme }) => compare.makeLensSchemes(s, scheme.id).setup),
  lowAndHigh: edits((s, { scheme }) => compare.makeLowAndHighSchemes(s, scheme.id).setup),
  lightBy: makesScheme((s, id, dice) => lightBy(s, id, dice.one(['one-frame', 'standing', 'separate']))),
  blendMode: edits((s, { scheme }, dice) => blends.setBlendMode(s, scheme.id, dice.one(['lighten', 'add', 'average']))),
  blendEntry: edits((s, { scheme }, dice) =>
    blends.changeBlendEntry(s, scheme.id, dice.whole(0, 4), {
      weight: dice.between(0, 4),
      featherPixels: dice.whole(0, 500),
      where: dice.one(['everything', 'sky', 'land', 'ground']),
    }),
  ),
  blendSubject: edits((s, { scheme }, dice) => {
    const subject = dice.maybe(s.subjects);
    const part = { where: 'subject', subjectId: subject?.id ?? null } as const;
    return subject ? blends.changeBlendEntry(s, scheme.id, dice.whole(0, 4), part) : s;
  }),
  addToBlend: edits((s, { framePlace }) => blends.addToBlend(s, framePlace.schemeId, framePlace.frameId)),
  repeatInBlend: edits((s, { scheme }, dice) => blends.repeatInBlend(s, scheme.id, dice.whole(0, 4))),
  leaveOutOfBlend: edits((s, { scheme }, dice) => blends.leaveOutOfBlend(s, scheme.id, dice.whole(0, 4))),
  moveCamera: edits((s, { scheme }, dice) => places.moveCamera(s, scheme.id, dice.place())),
  aimCamera: edits((s, { scheme }, dice) => places.aimCamera(s, scheme.id, dice.place())),
  walkCamera: edits((s, { scheme }, dice) =>
    placing.walkCamera(s, scheme.id, dice.between(-5, 5), dice.between(-5, 5)),
  ),
  turnCamera: edits((s, { scheme }, dice) =>
    placing.turnCamera(s, scheme.id, dice.between(-90, 90), dice.between(-90, 90)),
  ),
  cameraHeight: edits((s, { scheme }, dice) => placing.setCameraHeight(s, scheme.id, dice.between(-500, 2000))),
  portrait: edits((s, { scheme }, dice) => placing.setPortrait(s, scheme.id, dice.flag())),
  lowCamera: edits((s, { scheme }) => placing.lowCamera(s, scheme.id)),
  lens: edits((s, { scheme }, dice) =>
    places.changeCamera(s, scheme.id, (camera) => ({
      ...camera,
      focalLengthMm: dice.between(3, 2000),
      rollDegrees: dice.between(-180, 180),
    })),
  ),
  sensor: edits((s, { scheme }, dice) => {
    const field = dice.one(Object.keys(sensor) as (keyof typeof sensor)[]);
    return places.setSensor(s, scheme.id, { [field]: dice.between(sensor[field][0], sensor[field][1]) });
  }),
  drawn: edits((s, { scheme }, dice) =>
    places.setDrawn(s, scheme.id, { focusBlur: dice.flag(), noise: dice.flag(), holder: dice.flag() }),
  ),
  ownCamera: edits((s, { scheme }) => places.giveOwnCamera(s, scheme.id)),
  sharedCamera: edits((s, { scheme }) => places.dropOwnCamera(s, scheme.id)),
  otherLens: edits((s, { scheme }, dice) => places.setFocalLengthSameSize(s, scheme.id, dice.between(3, 2000))),
};
