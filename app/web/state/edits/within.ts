import type { Frame, Pass, Position, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';

/** Where a frame is in a setup. */
export interface FramePlace {
  readonly schemeId: string;
  readonly frameId: string;
}

/** Where a pass is in a setup. */
export interface PassPlace extends FramePlace {
  readonly passId: string;
}

/** The list with one entry changed, the rest shared; the same list when nothing changed. */
export const replaceById = <T extends { readonly id: string }>(items: T[], id: string, change: (item: T) => T): T[] => {
  let changed = false;
  const next = items.map((item) => {
    if (item.id !== id) return item;
    const replaced = change(item);
    changed ||= replaced !== item;
    return replaced;
  });
  return changed ? next : items;
};

export const changeScheme = (setup: Setup, schemeId: string, change: (scheme: Scheme) => Scheme): Setup => {
  const schemes = replaceById(setup.schemes, schemeId, change);
  return schemes === setup.schemes ? setup : { ...setup, schemes };
};

export const changeFrame = (setup: Setup, place: FramePlace, change: (frame: Frame) => Frame): Setup =>
  changeScheme(setup, place.schemeId, (scheme) => {
    const frames = replaceById(scheme.frames, place.frameId, change);
    return frames === scheme.frames ? scheme : { ...scheme, frames };
  });

export const changePass = (setup: Setup, place: PassPlace, change: (pass: Pass) => Pass): Setup =>
  changeFrame(setup, place, (frame) => {
    const passes = replaceById(frame.passes, place.passId, change);
    return passes === frame.passes ? frame : { ...frame, passes };
  });

/** An id that no item has yet: "key", "key-2", "key-3" … */
export const freshId = (items: readonly { readonly id: string }[], wish: string): string => {
  const taken = new Set(items.map(({ id }) => id));
  const stem = wish.replace(/-\d+$/, '').slice(0, 58);
  for (let n = 1; ; n++) {
    const candidate = n === 1 ? stem : `${stem}-${n}`;
    if (!taken.has(candidate)) return candidate;
  }
};

/** The same place, held within what the document takes: 5 km level, 500 m down, 2 km up. */
export const withinWorld = ([east, north, up]: Position): Position => {
  const clamp = (v: number, low: number, high: number) => Math.min(Math.max(v, low), high);
  return [clamp(east, -5000, 5000), clamp(north, -5000, 5000), clamp(up, -500, 2000)];
};

/** Whether two places differ by more than a rounding. */
export const areApart = (a: Position, b: Position): boolean => a.some((v, i) => Math.abs(v - (b[i] as number)) > 1e-6);
