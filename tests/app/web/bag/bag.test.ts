import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BagRefused, freshName, lampsOfFile, newTorch, withTappedBeam } from '../../../../app/web/bag/bag-lamps.ts';
import { type BagKeeper, correctedKept, isSameLamp, keptOf, LampBag, twinOf } from '../../../../app/web/state/bag.ts';
import { addLampFromBag, takeLampFromBag } from '../../../../app/web/state/edits/bag-edits.ts';
import { Connection } from '../../../../app/web/storage/connection.ts';
import { deleteKeptLamp, keptLamps, putKeptLamp } from '../../../../app/web/storage/lamps-kept.ts';
import type { KeptLamp } from '../../../../app/web/storage/records.ts';
import { formatBag } from '../../../../core/bag/bag-file.ts';
import { parseSetup, validateSetup } from '../../../../core/setup/parse-setup.ts';
import type { Lamp, Setup } from '../../../../core/setup/schema/setup.ts';
import { fluxOf } from '../../../../core/world/lamp-light.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const torch = stones.lamps[0] as Lamp;
const shot = { at: null, stops: -0.8, uncertaintyStops: 0.3 };
const ies = () => new File([readFileSync('tests/reference/fixtures/round-torch.ies')], 'round-torch.ies');

/** A bag over the browser's store, as the page has it. */
const keeperOver = (connection: Connection): BagKeeper => ({
  all: () => connection.use(keptLamps),
  put: (lamp) => connection.use((database) => putKeptLamp(database, lamp)),
  remove: (id) => connection.use((database) => deleteKeptLamp(database, id)),
});
const lampsOf = (bag: LampBag) => bag.state.getState().lamps ?? [];
const good = (setup: Setup) => expect(validateSetup(JSON.parse(JSON.stringify(setup)))).toEqual(setup);

describe('the bag, kept in the browser', () => {
  it('has its lamps again in another page: added, corrected, taken out', async () => {
    const [first, second, third] = [0, 1, 2].map(() => new LampBag(keeperOver(new Connection()))) as [
      LampBag,
      LampBag,
      LampBag,
    ];
    const kept = keptOf({ lamp: torch, beam: null }, null);
    const other = keptOf({ lamp: newTorch(), beam: null }, null);
    expect(await first.put(kept, other)).toBe(true);
    await second.load();
    expect(
      lampsOf(second)
        .map(({ lamp }) => lamp.name)
        .sort(),
    ).toEqual(['My torch', torch.name].sort());
    const twin = twinOf(lampsOf(second), torch) as KeptLamp;
    await second.put(correctedKept(twin, shot));
    await second.remove(other.id);
    await third.load();
    expect(lampsOf(third)).toHaveLength(1);
    expect(lampsOf(third)[0]?.lamp).toMatchObject({ name: torch.name, correctionStops: -0.8, testShots: [shot] });
  });

  it('says when nothing can be kept, and shows the lamp for now all the same', async () => {
    const refuses = () => Promise.reject(new Error('no room'));
    const bag = new LampBag({ all: async () => [], put: refuses, remove: refuses });
    expect(await bag.put(keptOf({ lamp: torch, beam: null }, null))).toBe(false);
    expect(bag.state.getState().problem).toMatch(/can’t be kept.*Export it/);
    expect(lampsOf(bag)).toHaveLength(1);
  });
});

describe('a lamp of the bag in a setup', () => {
  it('is a copy: its twin is known by kind and name, and by what differs', () => {
    const kept = keptOf({ lamp: torch, beam: null }, null);
    const { setup, lampId } = addLampFromBag({ ...stones, lamps: [] }, kept);
    good({ ...setup, lamps: [...stones.lamps, ...setup.lamps.slice(1)] });
    const copy = setup.lamps.find(({ id }) => id === lampId) as Lamp;
    expect(twinOf([kept], copy)).toBe(kept);
    expect(isSameLamp({ lamp: copy, beam: null }, kept)).toBe(true);
    expect(isSameLamp({ lamp: copy, beam: null }, correctedKept(kept, shot))).toBe(false);
    expect(twinOf([kept], { ...copy, name: 'Another' })).toBeNull();
    expect(twinOf([kept], { ...newTorch(), kind: 'lantern', name: torch.name } as Lamp)).toBeNull();
  });

  it('takes the corrections of its twin when asked', () => {
    const newer = correctedKept(keptOf({ lamp: torch, beam: null }, null), shot);
    const taken = takeLampFromBag(stones, torch.id, newer);
    good(taken);
    expect(taken.lamps[0]).toEqual({ ...torch, correctionStops: -0.8, testShots: [shot] });
  });

  it('brings its measured beam along, once, and takes it away again', async () => {
    const [lamp] = await lampsOfFile(ies());
    const kept = keptOf(lamp as never, null);
    const once = addLampFromBag(stones, kept).setup;
    const twice = addLampFromBag(once, kept).setup;
    good(twice);
    expect(twice.measuredBeams).toHaveLength(stones.measuredBeams.length + 1);
    const back = takeLampFromBag(once, once.lamps.at(-1)?.id as string, { lamp: newTorch(), beam: null });
    good(back);
    expect(back.measuredBeams).toHaveLength(0);
  });
});

describe('files for the bag', () => {
  it('a photometric file is a torch with the file’s own lumens', async () => {
    const [found] = await lampsOfFile(ies());
    expect(found?.lamp).toMatchObject({ kind: 'torch', output: { from: 'measured' } });
    expect(fluxOf(found?.lamp as Lamp, [found?.beam as never])).toBeGreaterThan(1);
  });

  it('an exported bag is read again; a name that is taken gets a number', async () => {
    const text = formatBag([{ lamp: torch, beam: null }]);
    const [found] = await lampsOfFile(new File([text], 'bag.json'));
    expect(found?.lamp).toMatchObject({ name: torch.name, output: torch.output });
    expect(freshName([torch], torch)).toBe(`${torch.name} 2`);
    expect(freshName([], torch)).toBe(torch.name);
  });

  it.each([
    ['a letter', 'aunt.json', 'dear aunt', /line 1: must be JSON/],
    ['a setup', 'hut.json', '{"format":"lampfall-setup"}', /format: must be "lampfall-bag"/],
    ['a photometric file that is none', 'x.ies', 'IESNA:LM-63-2002\nnothing', /^Line \d+: /],
  ])('%s is refused in words', async (_, name, text, words) => {
    const error = await lampsOfFile(new File([text], name)).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(BagRefused);
    expect((error as Error).message).toMatch(words);
  });
});

describe('withTappedBeam', () => {
  const degree = Math.PI / 180;
  it('gives a torch the spot and the candela of the taps, within what a setup takes', () => {
    const tapped = {
      shape: 'spot',
      beamRadians: 12.34 * degree,
      spillRadians: 80 * degree,
      spillShare: 0.41,
      peakCandela: 450,
    } as const;
    const own = withTappedBeam(torch, tapped);
    good({ ...stones, lamps: [own] });
    expect(own).toMatchObject({
      output: { from: 'peak-candela', candela: 450 },
      beam: { shape: 'spot', beamDegrees: 12.3, spillDegrees: 80, spillShare: 0.41 },
    });
  });
  it('leaves a lamp that has no beam as it is', () => {
    const lantern = { ...newTorch(), kind: 'lantern' } as unknown as Lamp;
    expect(
      withTappedBeam(lantern, { shape: 'lobe', beamRadians: 1, spillRadians: 0, spillShare: 0, peakCandela: 1 }),
    ).toBe(lantern);
  });
});
