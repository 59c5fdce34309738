import { aboveQuarterMoon } from './above-quarter-moon.ts';
import { beamAtSky } from './beam-at-sky.ts';
import { burntPart } from './burnt-part.ts';
import { cannotWalk } from './cannot-walk.ts';
import type { Caution, PassCase, PassRule, SchemeCase, SchemeRule, Severity } from './caution.ts';
import { coreHidden } from './core-hidden.ts';
import { burnt, tooDark } from './exposure.ts';
import { eye } from './eye.ts';
import { flare } from './flare.ts';
import { focusApart } from './focus-apart.ts';
import { glowOverCore } from './glow-over-core.ts';
import { hotSpot } from './hot-spot.ts';
import { lampInFrame } from './lamp-in-frame.ts';
import { insideSubject, lampBelowGround } from './lamp-place.ts';
import { landOverSky } from './land-over-sky.ts';
import { lateFromCamera } from './late-from-camera.ts';
import { moonInFrame } from './moon-in-frame.ts';
import { moonWashesCore } from './moon-washes-core.ts';
import { nearAxis } from './near-axis.ts';
import { outOfDepth } from './out-of-depth.ts';
import { peopleInPicture } from './people-in-picture.ts';
import { personInFrame } from './person-in-frame.ts';
import { personShadow } from './person-shadow.ts';
import { shadowsDisagree } from './shadows-disagree.ts';
import { silhouetteLost } from './silhouette-lost.ts';
import { skyBurnt } from './sky-burnt.ts';
import { skyClock } from './sky-clock.ts';
import { starTrails } from './star-trails.ts';
import { terrain } from './terrain.ts';
import { tooHigh } from './too-high.ts';
import { tooQuick } from './too-quick.ts';
import { twilight } from './twilight.ts';
import { uneven } from './uneven.ts';
import { unreachableLevel } from './unreachable-level.ts';

const passRules: readonly PassRule[] = [
  nearAxis,
  lampInFrame,
  flare,
  burnt,
  tooDark,
  unreachableLevel,
  hotSpot,
  uneven,
  beamAtSky,
  lampBelowGround,
  insideSubject,
  tooHigh,
  cannotWalk,
  personInFrame,
  personShadow,
];
const schemeRules: readonly SchemeRule[] = [
  burntPart,
  outOfDepth,
  starTrails,
  aboveQuarterMoon,
  eye,
  terrain,
  tooQuick,
  lateFromCamera,
  peopleInPicture,
  shadowsDisagree,
  landOverSky,
  focusApart,
  skyClock,
  twilight,
  skyBurnt,
  moonInFrame,
  moonWashesCore,
  coreHidden,
  glowOverCore,
  silhouetteLost,
];

/** Where the first is said, these are not: they have the same cause, or come after it. */
const hushed: readonly (readonly [said: string, unsaid: readonly string[]])[] = [
  ['burnt', ['unreachable-level', 'hot-spot', 'uneven']],
  ['too-dark', ['unreachable-level', 'uneven']],
  ['hot-spot', ['unreachable-level', 'uneven']],
];

/** Of the light of a lamp that is buried or enclosed, if only on part of its way, nothing is told. */
const isMisplaced = ({ code }: Caution): boolean => code === 'lamp-below-ground' || code === 'inside-subject';

/** What is told of it all the same: what has to do with whoever holds it, and with eyes. */
const stillTold = ['lamp-in-frame', 'too-high', 'cannot-walk', 'person-in-frame'];
const stillAsked: readonly SchemeRule[] = [eye, terrain, tooQuick, lateFromCamera];

const order: Record<Severity, number> = { danger: 0, warning: 1, note: 2 };

/** Every caution about one pass, worst first. */
export const cautionsOf = (passCase: PassCase): Caution[] => {
  const found = passRules.flatMap((rule) => rule(passCase) ?? []);
  const misplaced = found.filter(isMisplaced);
  const unsaid = hushed.flatMap(([said, codes]) => (found.some(({ code }) => code === said) ? codes : []));
  const still = found.filter(({ code }) => stillTold.includes(code));
  const told = misplaced.length > 0 ? [...misplaced, ...still] : found.filter(({ code }) => !unsaid.includes(code));
  return told.sort((a, b) => order[a.severity] - order[b.severity]);
};

/** Every caution that takes more than one pass to see. */
export const cautionsOfScheme = (schemeCase: SchemeCase): (Caution & { readonly frameId: string })[] => {
  const frames = schemeCase.frames.map((frame) => ({
    ...frame,
    passes: frame.passes.filter(({ cautions }) => !cautions.some(isMisplaced)),
  }));
  return schemeRules.flatMap((rule) => rule(stillAsked.includes(rule) ? schemeCase : { ...schemeCase, frames }));
};
