import { describe, expect, it } from 'vitest';
import {
  arrowStep,
  cornerBehind,
  firstPatch,
  movedQuad,
  patchBehind,
  resizedQuad,
  worldCorners,
} from '../../../app/web/picture/patch-moves.ts';
import { removePatch, setPatch } from '../../../app/web/state/edits/patch-edits.ts';
import { type PictureQuad, patchInPicture, quadOfRectangle } from '../../../core/readings/patch-corners.ts';
import { validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Patch, Scheme } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

const setup = onePassSetup({
  camera: { position: [0, 0, 1.6], aim: [0, 6, 1], focalLengthMm: 24 },
  pass: { waypoints: [{ time: 0, position: [2, 3, 1], aim: [0, 6, 1] }] },
});
const world = buildWorld(setup, setup.schemes[0] as Scheme);
const quad = quadOfRectangle(0.4, 0.6, 0.6, 0.8);
const corners = patchBehind(world, quad) as Patch['corners'];
const seen = (patch: Patch) => patchInPicture(world.view, worldCorners(patch)) as PictureQuad;
const apart = (a: PictureQuad, b: PictureQuad) =>
  Math.max(...a.map(([x, y], i) => Math.hypot(x - (b[i] as PictureQuad[0])[0], y - (b[i] as PictureQuad[0])[1])));

describe('setPatch', () => {
  it('keeps the patch to the millimetre in a document that is valid', () => {
    const next = setPatch(setup, corners);
    expect(validateSetup(JSON.parse(JSON.stringify(next)))).toEqual(next);
    next.patch?.corners.flat().forEach((v, i) => {
      expect(Math.abs(v - (corners.flat()[i] as number))).toBeLessThanOrEqual(0.0005 + 1e-12);
      expect(v).toBe(Number(v.toFixed(3)));
    });
    expect(apart(seen(next.patch as Patch), quad)).toBeLessThan(1e-3);
  });

  it('changes nothing when it is the same, or when a corner lies beyond what a setup holds', () => {
    const next = setPatch(setup, corners);
    expect(setPatch(next, corners)).toBe(next);
    expect(setPatch(next, corners.with(2, [0, 5600, 0]) as Patch['corners'])).toBe(next);
  });

  it('removePatch takes it away, and nothing from nothing', () => {
    expect(removePatch(setPatch(setup, corners))).toEqual(setup);
    expect(removePatch(setup)).toBe(setup);
  });
});

describe('moving the patch', () => {
  it('arrows go 1 % of the picture, with Shift 5 %', () => {
    expect(arrowStep({ key: 'ArrowUp', shiftKey: false })).toEqual([0, -0.01]);
    expect(arrowStep({ key: 'ArrowRight', shiftKey: true })).toEqual([0.05, 0]);
    expect(arrowStep({ key: 'a', shiftKey: false })).toBeNull();
  });

  it('the middle stays in the picture, and comes back into it at the first step', () => {
    expect(apart(movedQuad(quad, 0.1, -0.05), quadOfRectangle(0.5, 0.55, 0.7, 0.75))).toBeLessThan(1e-12);
    expect(apart(movedQuad(quad, 3, 0), quadOfRectangle(0.9, 0.6, 1.1, 0.8))).toBeLessThan(1e-12);
    expect(
      apart(movedQuad(quadOfRectangle(1.4, 0.6, 1.6, 0.8), -0.01, 0), quadOfRectangle(0.9, 0.6, 1.1, 0.8)),
    ).toBeLessThan(1e-12);
  });

  it('grows about its middle, and shrinks to 2 % at least', () => {
    expect(apart(resizedQuad(quad, 0.1, -0.1), quadOfRectangle(0.35, 0.65, 0.65, 0.75))).toBeLessThan(1e-12);
    expect(apart(resizedQuad(quad, -1, 0), quadOfRectangle(0.49, 0.6, 0.51, 0.8))).toBeLessThan(1e-12);
  });

  it('one corner moves and the others stay where they are in the scene; a fold and the sky are refused', () => {
    const patch = { corners };
    const moved = cornerBehind(world, patch, quad, 2, [0.65, 0.85]) as Patch['corners'];
    expect(moved.map((corner, c) => corner.every((v, i) => v === corners[c]?.[i]))).toEqual([true, true, false, true]);
    expect(apart(seen({ corners: moved }), quad.with(2, [0.65, 0.85]) as unknown as PictureQuad)).toBeLessThan(1e-6);
    expect(cornerBehind(world, patch, quad, 2, [0.42, 0.62])).toBeNull();
    expect(cornerBehind(world, patch, quad, 0, [0.4, 0.2])).toBeNull();
    expect(patchBehind(world, quadOfRectangle(0.4, 0.1, 0.6, 0.3))).toBeNull();
  });

  it('a first patch lies in the middle third across, on the ground, and not off to the horizon; with sky alone there is none', () => {
    const first = firstPatch(world) as Patch['corners'];
    const xs = seen({ corners: first }).map(([x]) => x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([expect.closeTo(1 / 3, 4), expect.closeTo(2 / 3, 4)]);
    for (const [, north, up] of first) {
      expect(Math.abs(up)).toBeLessThan(1e-3);
      expect(north).toBeLessThan(30);
    }
    const up = { ...setup, camera: { ...setup.camera, aim: [0, 2, 9] as [number, number, number] } };
    expect(firstPatch(buildWorld(up, up.schemes[0] as Scheme))).toBeNull();
  });
});
