import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';

/** What is selected: a pass of the present scheme, a subject, a hazard, the camera, the ground, the place, or whoever walks. */
export type Selection =
  | { readonly kind: 'pass'; readonly frameId: string; readonly passId: string }
  | { readonly kind: 'subject'; readonly subjectId: string }
  | { readonly kind: 'camera' }
  | { readonly kind: 'ground' }
  | { readonly kind: 'place' }
  | { readonly kind: 'walking' }
  | { readonly kind: 'hazards' }
  | { readonly kind: 'hazard'; readonly hazardId: string }
  | null;

/** Where in the setup one is. */
export interface SessionPointers {
  readonly schemeId: string;
  /** The frame shown and edited; "blend" is not a frame but shows all of them. */
  readonly frameId: string;
  readonly selection: Selection;
}

/** The frame that a scheme opens on: its last painted one. */
const mainFrame = (scheme: Scheme): Frame =>
  scheme.frames.findLast(({ purpose }) => purpose === 'painted') ?? (scheme.frames.at(-1) as Frame);

const firstPass = (frame: Frame): Selection => {
  const pass = frame.passes[0];
  return pass ? { kind: 'pass', frameId: frame.id, passId: pass.id } : null;
};

/** Where one is in a setup that is taken up. */
export const firstPointers = (setup: Setup): SessionPointers => {
  const scheme = setup.schemes[0] as Scheme;
  const frame = mainFrame(scheme);
  return { schemeId: scheme.id, frameId: frame.id, selection: firstPass(frame) };
};

/** A scheme's frame of an id; where it has none, the one that it opens on. */
const frameAt = (scheme: Scheme, frameId: string): Frame =>
  scheme.frames.find(({ id }) => id === frameId) ?? mainFrame(scheme);

/**
 * Session pointers that lead nowhere after a step of history are set right. In place of a scheme that is gone comes the one
 * before it: what it was made of, as a rule.
 */
export const settledPointers = (pointers: SessionPointers, before: Setup, after: Setup): SessionPointers => {
  const { schemes, subjects, hazards } = after;
  const place = before.schemes.findIndex(({ id }) => id === pointers.schemeId) - 1;
  const scheme =
    schemes.find(({ id }) => id === pointers.schemeId) ?? schemes[Math.max(place, 0)] ?? (schemes[0] as Scheme);
  const frame = frameAt(scheme, pointers.frameId);
  let { selection } = pointers;
  if (selection?.kind === 'pass') {
    const { frameId, passId } = selection;
    const there = scheme.frames.find(({ id }) => id === frameId)?.passes.some(({ id }) => id === passId);
    if (!there) selection = firstPass(frame);
  } else if (selection?.kind === 'subject') {
    const { subjectId } = selection;
    if (!subjects.some(({ id }) => id === subjectId)) selection = null;
  } else if (selection?.kind === 'hazard') {
    const { hazardId } = selection;
    if (!hazards.some(({ id }) => id === hazardId)) selection = { kind: 'hazards' };
  }
  return { schemeId: scheme.id, frameId: frame.id, selection };
};
