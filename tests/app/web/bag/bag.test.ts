import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { BagRefused, freshLampName, lampsOfFile, newTorch, withTappedBeam } from '../../../../app/web/bag/bag-lamps.ts';
import { type BagKeeper, keptOf, LampBag } from '../../../../app/web/state/bag.ts';
import { isSameLamp, isStatedAlike, twinOf } from '../../../../app/web/state/bag-twins.ts';
import { addLampFromBag, takeLampFromBag } from '../../../../app/web/state/edits/bag-edits.ts';
import { correctedKept } from '../../../../app/web/state/edits/corrected-kept.ts';
import { Connection } from '../../../../app/web/storage/connection.ts';
import { changeKeptLamps, keptLamps } from '../../../../app/web/storage/lamps-kept.ts';
import type { KeptLamp } from '../../../../app/web/storage/records.ts';
import { formatBag } from '../../../../core/bag/bag-file.ts';
import { maxBagLamps } from '../../../../core/bag/bag-size.ts';
import { parseSetup, validateSetup } from '../../../../core/setup/parse-setup.ts';
import type { Lamp, Setup } from '../../../../core/setup/schema/setup.ts';
import { fluxOf, realFluxOf } from '../../../../core/world/lamp-light.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const torch = stones.lamps[0] as Lamp;
const bare = { lamp: torch, beam: null };
const shot = { at: null, stops: -0.8, uncertaintyStops: 0.3 };
const ies = () => new File([readFileSync('tests/reference/fixtures/round-torch.ies')], 'round-torch.ies');

/** A bag over the browser's store, as the page has it. */
const keeperOver = (connection: Connection): BagKeeper => ({
  all: () => connection.use(keptLamps),
  change: (change) => connection.use((database) => changeKeptLamps(database, change)),
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
    const twin = twinOf(lampsOf(second), bare)?.kept as KeptLamp;
    await second.correct(twin.id, (now) => correctedKept(now, bare, shot));
    await second.remove(other.id);
    await third.load();
    expect(lampsOf(third)).toHaveLength(1);
    expect(lampsOf(third)[0]?.lamp).toMatchObject({ name: torch.name, correctionStops: -0.8, testShots: [shot] });
  });

  it('two tabs: what the other did meanwhile stays, and is seen when the tab is come back to', async () => {
    const [one, two] = [new LampBag(keeperOver(new Connection())), new LampBag(keeperOver(new Connection()))];
    await one.load();
    for (const { id } of lampsOf(one)) await one.remove(id);
    const kept = keptOf(bare, null);
    await one.put(kept);
    await two.load();
    await one.correct(kept.id, (now) => correctedKept(now, bare, shot));
    // a stale list in the second
    await two.correct(kept.id, (now) => correctedKept(now, bare, { ...shot, stops: -1 }));
    expect(lampsOf(two)[0]?.lamp.testShots.map(({ stops }) => stops)).toEqual([-0.8, -1]);
    await one.refresh();
    expect(lampsOf(one)).toEqual(lampsOf(two));
    await one.remove(kept.id);
    await two.correct(kept.id, (now) => correctedKept(now, bare, shot));
    expect(lampsOf(two)).toEqual([]);
  });

  it('one more than it holds is refused in words, and nothing is hidden or lost', async () => {
    const bag = new LampBag(keeperOver(new Connection()));
    await bag.load();
    const room = maxBagLamps - lampsOf(bag).length;
    expect(await bag.put(...Array.from({ length: room }, () => keptOf(bare, null)))).toBe(true);
    const before = lampsOf(bag);
    expect(await bag.put(keptOf(bare, null))).toBe(false);
    expect(bag.state.getState().problem).toMatch(/at most 200 lamps.*nothing was put in/);
    expect(new Set(lampsOf(bag))).toEqual(new Set(before));
    // in place of one that is there is no more
    expect(await bag.put(keptOf({ lamp: newTorch(), beam: null }, before[0] as KeptLamp))).toBe(true);
    expect(bag.state.getState().problem).toBeNull();
    for (const { id } of lampsOf(bag)) await bag.remove(id);
  });

  it('says when nothing can be kept, and shows the lamp for now all the same', async () => {
    const refuses = () => Promise.reject(new Error('no room'));
    const bag = new LampBag({ all: async () => [], change: refuses });
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
    const own = { lamp: copy, beam: null };
    expect(twinOf([kept], own)).toEqual({ kept, isAlike: true });
    expect(isSameLamp({ lamp: copy, beam: null }, kept)).toBe(true);
    expect(isSameLamp(own, correctedKept(kept, own, shot))).toBe(false);
    expect(twinOf([kept], { ...own, lamp: { ...copy, name: 'Another' } })).toBeNull();
    expect(twinOf([kept], { ...own, lamp: { ...newTorch(), kind: 'lantern', name: torch.name } as Lamp })).toBeNull();
  });

  it('of that name but of another box or beam is another lamp, unless there is no other and the user says so', () => {
    const of = (lumens: number, beamDegrees = 40) => ({
      lamp: {
        ...newTorch(),
        name: 'Torch',
        output: { from: 'lumens', lumens },
        beam: { shape: 'spot', beamDegrees, spillDegrees: 90, spillShare: 0.3 },
      } as Lamp,
      beam: null,
    });
    const [large, small] = [keptOf(of(1000), null), keptOf(of(200), null)];
    expect(twinOf([large, small], of(200))).toEqual({ kept: small, isAlike: true });
    expect(twinOf([large], of(200))).toEqual({ kept: large, isAlike: false });
    expect(isStatedAlike(of(200), of(200, 12))).toBe(false);
    // measured at 81 lm here: 81 lm there too, whatever is on the box
    const found = { ...shot, stops: -1.3 };
    expect(realFluxOf(correctedKept(small, of(200), found).lamp)).toBeCloseTo(81.2, 1);
    expect(realFluxOf(correctedKept(large, of(200), found).lamp)).toBeCloseTo(81.2, 0);
  });

  it('takes the corrections of its twin when asked', () => {
    const newer = correctedKept(keptOf(bare, null), bare, shot);
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
    expect(freshLampName([torch], torch)).toBe(`${torch.name} 2`);
    expect(freshLampName([{ ...torch, name: ` ${torch.name.toUpperCase()}` }], torch)).toBe(`${torch.name} 2`);
    expect(freshLampName([{ ...torch, kind: 'panel' } as unknown as Lamp], torch)).toBe(torch.name);
    expect(freshLampName([], torch)).toBe(torch.name);
  });

  it.each([
    [
      'a letter',
      'aunt.json',
      'dear aunt',
      /line 1: the text breaks off or has a stray character here; expected a whole file/,
    ],
    [
      'a setup',
      'hut.json',
      '{"format":"lampfall-setup"}',
      /format: this is not a bag of lamps; expected "lampfall-bag"/,
    ],
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
  const wide = { shape: 'lobe', beamRadians: 1, spillRadians: 0, spillShare: 0, peakCandela: null } as const;
  const calibrated = {
    ...torch,
    output: { from: 'peak-candela', candela: 900 },
    correctionStops: -0.8,
    testShots: [shot],
  } as Lamp;
  it('lux on the wall measure the lamp itself: photos of before count no more', () => {
    const own = withTappedBeam(calibrated, { ...wide, peakCandela: 450 });
    expect(own).toMatchObject({ correctionStops: 0, testShots: [], output: { candela: 450 } });
  });
  it('without lux what photos found it really to give stands, of a measured beam too', async () => {
    const before = realFluxOf(calibrated);
    expect(realFluxOf(withTappedBeam(calibrated, wide)) / before).toBeCloseTo(1, 2);
    const [file] = await lampsOfFile(ies());
    const measured = { ...(file?.lamp as Lamp), correctionStops: -0.8, testShots: [shot] };
    const beam = file?.beam as never;
    const own = withTappedBeam(measured, wide, beam);
    expect(realFluxOf(own) / realFluxOf(measured, [beam])).toBeCloseTo(1, 2);
    good({ ...stones, lamps: [{ ...own, id: torch.id }] });
  });
  it('leaves a lamp that has no beam as it is', () => {
    const lantern = { ...newTorch(), kind: 'lantern' } as unknown as Lamp;
    expect(
      withTappedBeam(lantern, { shape: 'lobe', beamRadians: 1, spillRadians: 0, spillShare: 0, peakCandela: 1 }),
    ).toBe(lantern);
  });
});
