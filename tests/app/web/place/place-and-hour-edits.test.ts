import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../../app/web/state/edits/edit-refused.ts';
import { addGlowDome, changeGlowDome, removeGlowDome } from '../../../../app/web/state/edits/glow-dome-edits.ts';
import {
  changeMoonlight,
  changeSky,
  changeSkylight,
  setCoordinates,
  setLocalTime,
  setNorth,
  setPlace,
  setTimeZone,
} from '../../../../app/web/state/edits/place-and-hour-edits.ts';
import { createAppStore } from '../../../../app/web/state/store.ts';
import { formatSetup } from '../../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { plainAir } from '../../../../core/world/sky-of-place.ts';

const sample = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
/** Under a plain sky, and without towns. */
const stones: Setup = { ...sample, place: { ...sample.place, northDegrees: 0, sky: null, glowDomes: [] } };

describe('edits of place and hour', () => {
  it('give setups that the parser takes, whatever was set', () => {
    let setup = setCoordinates(stones, -33.123456, 149.000004, 'Australia/Sydney');
    setup = setLocalTime(setup, '2026-08-20T20:30');
    setup = setNorth(setup, 372.5);
    setup = changeSky(setPlace(setup, { sky: plainAir, hazeVisibilityKm: 12 }), { thinCloudDepth: 0.4 });
    setup = changeMoonlight(setup, { altitudeDegrees: 12 });
    setup = changeSkylight(setup, { illuminanceLux: 0.002 });
    setup = addGlowDome(setup, 214.6);
    expect(setup.place).toMatchObject({
      latitudeDegrees: -33.12346,
      longitudeDegrees: 149,
      timeZone: 'Australia/Sydney',
      localTime: '2026-08-20T20:30',
      northDegrees: 12.5,
      sky: { ...plainAir, thinCloudDepth: 0.4 },
      moonlight: { altitudeDegrees: 12 },
      skylight: { illuminanceLux: 0.002 },
      hazeVisibilityKm: 12,
    });
    expect(setup.place.glowDomes[0]).toMatchObject({ name: 'Town', bearingDegrees: 215 });
    expect(parseSetup(formatSetup(setup))).toEqual(setup);
  });

  it('leave the clock where it is when zone or place change, and the place when the clock does', () => {
    expect(setTimeZone(stones, 'Etc/UTC').place.localTime).toBe(stones.place.localTime);
    expect(setCoordinates(stones, 10, 20).place).toEqual({
      ...stones.place,
      latitudeDegrees: 10,
      longitudeDegrees: 20,
    });
    expect(setLocalTime(stones, '2030-01-01T00:00').place).toEqual({
      ...stones.place,
      localTime: '2030-01-01T00:00',
    });
  });

  it('give the same setup where nothing changes, so that redo is not cut off', () => {
    const { place } = stones;
    expect(setLocalTime(stones, place.localTime)).toBe(stones);
    expect(setCoordinates(stones, place.latitudeDegrees, place.longitudeDegrees)).toBe(stones);
    expect(setNorth(stones, place.northDegrees + 360)).toBe(stones);
    const plain = setPlace(stones, { sky: null });
    expect(changeSky(plain, { zenithMagnitude: 19 })).toBe(plain);
    expect(changeGlowDome(stones, 3, { widthDegrees: 2 })).toBe(stones);
    expect(removeGlowDome(stones, 0)).toBe(stones);
  });

  it('are one step back each, and a drag is one', () => {
    const store = createAppStore(stones);
    const { edit, begin, commit, undo } = store.getState();
    begin();
    for (const minute of ['10', '20', '30']) edit((s) => setLocalTime(s, `2026-10-09T21:${minute}`));
    commit();
    edit((s) => setPlace(s, { sky: plainAir }));
    undo();
    expect(store.getState().history.present.place.localTime).toBe('2026-10-09T21:30');
    undo();
    expect(store.getState().history.present).toBe(stones);
  });
});

describe('edits of the glow of towns', () => {
  const two = addGlowDome(addGlowDome(stones, 90), -10);

  it('add each with a name of its own and a bearing of 0 to 359', () => {
    expect(two.place.glowDomes.map(({ name, bearingDegrees }) => [name, bearingDegrees])).toEqual([
      ['Town', 90],
      ['Town 2', 350],
    ]);
  });

  it('change and take away the one that is meant; an empty name is not taken', () => {
    const changed = changeGlowDome(two, 1, { name: '  ', widthDegrees: 30 });
    expect(changed.place.glowDomes[1]).toEqual({ ...two.place.glowDomes[1], widthDegrees: 30 });
    expect(changed.place.glowDomes[0]).toBe(two.place.glowDomes[0]);
    expect(changeGlowDome(two, 0, { name: 'Harbour\ntown' }).place.glowDomes[0]?.name).toBe('Harbour town');
    expect(removeGlowDome(two, 0).place.glowDomes).toEqual([two.place.glowDomes[1]]);
  });

  it('refuse the thirteenth', () => {
    let setup = stones;
    for (let n = 0; n < 12; n++) setup = addGlowDome(setup, n);
    expect(() => addGlowDome(setup, 0)).toThrow(EditRefused);
  });
});
