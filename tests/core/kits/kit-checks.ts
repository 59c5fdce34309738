import { BufferAttribute, BufferGeometry, Matrix4 } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import { seededRandom } from '../../../core/geometry/random.ts';
import { initialValues, type Kit, type KitValues, subjectFromKit } from '../../../core/kits/kit.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import { partMesh } from '../../../core/world/part-mesh.ts';

/** What tests want to know of a subject made by a kit, in document axes: [east, north, up] in metres. */

export const kitSubject = (kit: Kit, values: KitValues = {}, seed = 1): Subject =>
  subjectFromKit(kit, { ...initialValues(kit), ...values }, seed, { id: 'thing', name: 'Thing' });

export interface Bounds {
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

/** Corners of the parts whose name passes, three numbers each, document axes. */
export const cornersOf = (subject: Subject, named: (name: string) => boolean = () => true): number[][] =>
  subject.parts
    .filter(({ name }) => named(name))
    .flatMap((part) => {
      const { positions } = partMesh(subject, part);
      return Array.from({ length: positions.length / 3 }, (_, i) => [
        positions[3 * i] as number,
        -(positions[3 * i + 2] as number),
        positions[3 * i + 1] as number,
      ]);
    });

export const boundsOf = (subject: Subject, ...names: readonly string[]): Bounds => {
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const corner of cornersOf(subject, (name) => names.length === 0 || names.includes(name)))
    for (const axis of [0, 1, 2] as const) {
      low[axis] = Math.min(low[axis], corner[axis] as number);
      high[axis] = Math.max(high[axis], corner[axis] as number);
    }
  return { low, high };
};

/** Size of a box about the named parts. */
export const sizeOf = (subject: Subject, ...names: readonly string[]): readonly [number, number, number] => {
  const { low, high } = boundsOf(subject, ...names);
  return [high[0] - low[0], high[1] - low[1], high[2] - low[2]];
};

/** Values drawn evenly within all ranges, and every field at either end of its range. */
export const triedValues = (kit: Kit, count: number, seed: number): KitValues[] => {
  const random = seededRandom(seed);
  const draw = (pick: (min: number, max: number) => number): KitValues =>
    Object.fromEntries(kit.fields.map(({ key, min, max }) => [key, pick(min, max)]));
  return [
    draw((min) => min),
    draw((_, max) => max),
    ...Array.from({ length: count }, () => draw((min, max) => min + random() * (max - min))),
    ...Array.from({ length: count }, () => draw((min, max) => (random() < 0.5 ? min : max))),
  ];
};

/** How far apart two parts may be and still count as touching, metres. */
const touchMetres = 0.004;

/**
 * Names of parts that neither reach the ground nor hang together with one that does. Whether two parts meet is asked of
 * three-mesh-bvh: their skins cross, or come within 4 mm of each other.
 */
export const floatingParts = (subject: Subject): string[] => {
  const shapes = subject.parts.map((part) => {
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(new Float32Array(partMesh(subject, part).positions), 3));
    geometry.computeBoundingBox();
    const bvh = new MeshBVH(geometry);
    Object.assign(geometry, { boundsTree: bvh });
    const box = geometry.boundingBox?.clone();
    if (!box) throw new Error('no box');
    return { name: part.name, geometry, bvh, box: box.expandByScalar(touchMetres) };
  });
  const still = new Matrix4();
  const isHeld = shapes.map(({ box }) => box.min.y <= 2 * touchMetres);
  const fresh = shapes.map((_, i) => i).filter((i) => isHeld[i]);
  while (fresh.length > 0) {
    const held = shapes[fresh.pop() as number] as (typeof shapes)[number];
    shapes.forEach(({ geometry, box }, i) => {
      if (isHeld[i] || !held.box.intersectsBox(box)) return;
      const meets =
        held.bvh.intersectsGeometry(geometry, still) ||
        (held.bvh.closestPointToGeometry(geometry, still, undefined, undefined, 0, touchMetres)?.distance ?? 1) <=
          touchMetres;
      if (!meets) return;
      isHeld[i] = true;
      fresh.push(i);
    });
  }
  return shapes.filter((_, i) => !isHeld[i]).map(({ name }) => name);
};
