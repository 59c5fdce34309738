import { describe, expect, it } from 'vitest';
import { bench } from '../../../core/kits/bench.ts';
import { boat } from '../../../core/kits/boat.ts';
import { car } from '../../../core/kits/car.ts';
import { cart } from '../../../core/kits/cart.ts';
import { fence } from '../../../core/kits/fence.ts';
import { jetty } from '../../../core/kits/jetty.ts';
import { initialValues, type Kit, settledValues } from '../../../core/kits/kit.ts';
import { person } from '../../../core/kits/person.ts';
import { silo } from '../../../core/kits/silo.ts';
import { tent } from '../../../core/kits/tent.ts';
import { van } from '../../../core/kits/van.ts';
import { well } from '../../../core/kits/well.ts';
import { windmill } from '../../../core/kits/windmill.ts';
import { trianglesOfPart } from '../../../core/setup/detail.ts';
import { subject as subjectSchema } from '../../../core/setup/schema/subject.ts';
import { partMesh } from '../../../core/world/part-mesh.ts';
import { enclosedVolume, openEdges } from '../support/meshes.ts';
import { stageWith } from '../support/scenes.ts';
import { boundsOf, floatingParts, kitSubject, triedValues } from './kit-checks.ts';

const kits: readonly Kit[] = [boat, jetty, tent, fence, person, bench, well, cart, car, van, windmill, silo];
const seed = 54_117;
const tries = 3;

/** What stands in the ground on purpose, and how deep, metres. */
const sunk: Readonly<Record<string, number>> = {
  boat: 0.05,
  jetty: 0.3,
  tent: 0.151,
  // a leaning post's lower end
  fence: 0.32,
  person: 0.05,
  bench: 0.05,
  well: 0.05,
  cart: 0.05,
  car: 0,
  van: 0,
  windmill: 0.05,
  silo: 0,
};

describe.each(kits.map((kit) => [kit.name, kit] as const))('kit %s', (name, kit) => {
  it('has 3 to 7 fields, whose first values lie in their ranges and on a step', () => {
    expect(kit.fields.length).toBeGreaterThanOrEqual(3);
    expect(kit.fields.length).toBeLessThanOrEqual(7);
    expect(settledValues(kit, initialValues(kit))).toEqual(initialValues(kit));
    for (const { min, max, initial, step, choices } of kit.fields) {
      expect(max).toBeGreaterThan(min);
      expect(Math.abs((initial - min) / step - Math.round((initial - min) / step))).toBeLessThan(1e-6);
      if (choices) expect([min, max, step]).toEqual([0, choices.length - 1, 1]);
    }
  });

  it('gives the same for the same seed, and keeps its name, numbers and seed', () => {
    expect(kitSubject(kit, {}, 7)).toEqual(kitSubject(kit, {}, 7));
    expect(kitSubject(kit, {}, 7).kit).toEqual({ name, values: initialValues(kit), seed: 7 });
  });

  it('is made of at most 300 parts and 12,000 triangles at first', () => {
    const { parts } = kitSubject(kit);
    const triangles = parts.reduce((sum, part) => sum + trianglesOfPart(part), 0);
    expect(parts.length).toBeLessThanOrEqual(300);
    expect(triangles).toBeLessThanOrEqual(12_000);
    expect(parts.every((part) => part.name !== '')).toBe(true);
  });

  it(`is sound, finite, closed, outside out and not floating for ${4 * tries + 4} sets of numbers (seed ${seed})`, () => {
    for (const values of [initialValues(kit), ...triedValues(kit, tries, seed)]) {
      const subject = kitSubject(kit, values, 3);
      const told = JSON.stringify(values);
      // what was made goes through a file unharmed
      expect(subjectSchema.parse(JSON.parse(JSON.stringify(subject)))).toEqual(subject);
      for (const part of subject.parts) {
        const mesh = partMesh(subject, part);
        expect(
          mesh.positions.every(Number.isFinite) && mesh.normals.every(Number.isFinite),
          `${part.name} ${told}`,
        ).toBe(true);
        expect(enclosedVolume(mesh), `${part.name} ${told}`).toBeGreaterThan(0);
        // cloth is thinner than what this takes for one place
        if (name !== 'tent') expect(openEdges(mesh), `${part.name} ${told}`).toBe(0);
      }
      expect(stageWith(subject).subjects[0]?.topMetres, told).toBeGreaterThan(0.2);
      const { low } = boundsOf(subject);
      expect(low[2], told).toBeGreaterThanOrEqual(-(sunk[name] ?? 0) - 0.006);
      expect(low[2], told).toBeLessThanOrEqual(1e-3);
      expect(floatingParts(subject), told).toEqual([]);
    }
  });

  it('stands over its origin, which lies under it both ways', () => {
    const { low, high } = boundsOf(kitSubject(kit));
    for (const axis of [0, 1] as const) {
      const [from, to] = [low[axis] as number, high[axis] as number];
      expect(from).toBeLessThan(0);
      expect(to).toBeGreaterThan(0);
    }
  });
});
