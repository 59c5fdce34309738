import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import {
  addRelief,
  beforeCamera,
  changeRelief,
  nextOfRelief,
  reliefLabel,
  removeRelief,
  roundSubject,
  setGroundFinish,
  setWholeGround,
  withDensity,
  withHeights,
} from '../../../app/web/state/edits/ground-edits.ts';
import { createAppStore } from '../../../app/web/state/store.ts';
import { finishNamed, presetOf } from '../../../core/setup/finish-presets.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import {
  type GroundPreset,
  groundPresets,
  type ReliefPreset,
  reliefPresets,
} from '../../../core/setup/ground-presets.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { trianglesOfRelief } from '../../../core/setup/relief-detail.ts';
import type { Relief, Setup } from '../../../core/setup/schema/setup.ts';
import { reliefMesh } from '../../../core/world/ground-mesh.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const schemeId = stones.schemes[0]?.id as string;
const preset = (id: string) => reliefPresets.find((each) => each.id === id) as ReliefPreset;
const readsBack = (setup: Setup) => expect(parseSetup(formatSetup(setup))).toEqual(setup);
const reliefOf = (setup: Setup, index: number): Relief => setup.ground.relief[index] as Relief;
type Strewn = Extract<Relief, { count: number }>;

describe('reliefPresets', () => {
  it.each(reliefPresets)(
    '$label: a setup takes it, it is called so, and it is of about 30,000 triangles at most',
    (each) => {
      const setup = addRelief(stones, schemeId, each);
      readsBack(setup);
      const added = setup.ground.relief.at(-1) as Relief;
      expect(reliefLabel(added)).toBe(each.label);
      expect(trianglesOfRelief(added)).toBeLessThanOrEqual(31_000);
      const drawn = reliefMesh(added).positions.length / 9;
      expect(drawn).toBeGreaterThan(200);
      expect(drawn).toBeLessThanOrEqual(trianglesOfRelief(added));
    },
  );
});

describe('setWholeGround', () => {
  it.each(groundPresets)(
    '$label: sets finish and relief in one step, a setup takes it, undo brings the old ground back',
    (each) => {
      const store = createAppStore(stones);
      store.getState().edit((s) => setWholeGround(s, schemeId, each));
      const { ground } = store.getState().history.present;
      expect(ground.finish).toEqual(each.ground.finish);
      expect(ground.relief).toHaveLength(each.ground.relief.length);
      expect(presetOf(ground.finish)).not.toBeNull();
      readsBack(store.getState().history.present);
      store.getState().undo();
      expect(store.getState().history.present).toBe(stones);
    },
  );

  it('puts the relief between the camera and the subject that it looks at', () => {
    const sand = groundPresets.find(({ label }) => label === 'Sand') as GroundPreset;
    expect(reliefOf(setWholeGround(stones, schemeId, sand), 0).centre).toEqual(beforeCamera(stones, schemeId));
  });
});

describe('places for relief', () => {
  it('round the subject: where the subject nearest to the aim of the camera stands', () => {
    const { aim } = stones.camera;
    const nearest = stones.subjects.toSorted(
      (a, b) =>
        Math.hypot(a.position[0] - aim[0], a.position[1] - aim[1]) -
        Math.hypot(b.position[0] - aim[0], b.position[1] - aim[1]),
    )[0];
    expect(roundSubject(stones, schemeId)).toEqual(nearest?.position.slice(0, 2));
  });

  it('without subjects: what the camera looks at', () => {
    const [east, north] = stones.camera.aim;
    const [toEast, toNorth] = roundSubject({ ...stones, subjects: [] }, schemeId);
    expect(toEast).toBeCloseTo(east, 2);
    expect(toNorth).toBeCloseTo(north, 2);
  });

  it('between camera and subject: half way (1 cm)', () => {
    const [east, north] = stones.camera.position;
    const [toEast, toNorth] = roundSubject(stones, schemeId);
    const [midEast, midNorth] = beforeCamera(stones, schemeId);
    expect(midEast).toBeCloseTo((east + toEast) / 2, 1);
    expect(midNorth).toBeCloseTo((north + toNorth) / 2, 1);
  });
});

describe('edits of one relief', () => {
  const two = addRelief(addRelief(stones, schemeId, preset('gravel')), schemeId, preset('ripples'));

  it('change and remove that one and share the others', () => {
    const index = stones.ground.relief.length;
    const changed = changeRelief(two, index, { ...reliefOf(two, index), radiusMetres: 4 });
    expect(reliefOf(changed, index).radiusMetres).toBe(4);
    expect(reliefOf(changed, index + 1)).toBe(reliefOf(two, index + 1));
    expect(changed.subjects).toBe(two.subjects);
    readsBack(changed);
    expect(removeRelief(changed, index).ground.relief).toHaveLength(index + 1);
    expect(reliefOf(removeRelief(changed, index), index)).toBe(reliefOf(two, index + 1));
  });

  it('refuse the ninth, and more triangles than are drawn; the setup stays as it was', () => {
    let full = stones;
    while (full.ground.relief.length < 8) full = addRelief(full, schemeId, preset('pool'));
    expect(() => addRelief(full, schemeId, preset('pool'))).toThrow(EditRefused);
    const crowd = { ...(preset('tufts').relief as Strewn), count: 20_000 };
    const once = changeRelief(full, 0, crowd);
    expect(() => changeRelief(once, 1, crowd)).toThrow(EditRefused);
    const store = createAppStore(once);
    store.getState().edit((s) => changeRelief(s, 1, crowd));
    expect(store.getState().history.present).toBe(once);
    expect(store.getState().notice?.tone).toBe('problem');
  });

  it('density: ten a square metre on a circle of 3 m are 283; heights come out the right way round', () => {
    const relief = { ...(preset('gravel').relief as Strewn), radiusMetres: 3 };
    expect(withDensity(relief, 10)).toMatchObject({ count: 283 });
    expect(withHeights(relief, [0.2, 0.1])).toMatchObject({ heightMetres: [0.1, 0.2] });
  });

  it('another seed moves everything; the seed stays within what the document takes', () => {
    const relief = preset('gravel').relief;
    expect(reliefMesh(nextOfRelief(relief)).positions).not.toEqual(reliefMesh(relief).positions);
    expect(nextOfRelief({ ...relief, seed: 4294967295 }).seed).toBe(0);
  });
});

describe('setGroundFinish', () => {
  it('changes the finish alone', () => {
    const snow = setGroundFinish(stones, finishNamed('fresh-snow'));
    expect(snow.ground.finish).toEqual(finishNamed('fresh-snow'));
    expect(snow.ground.relief).toBe(stones.ground.relief);
    readsBack(snow);
  });
});
