import { weldCorners } from '../../../../core/geometry/weld.ts';
import { counted } from '../limits.ts';
import { ScanError } from '../scan-error.ts';
import type { RawMesh } from '../scanned-mesh.ts';

/** Numbers beyond this are broken, whatever the unit. */
const farthest = 1e12;
/** Corners nearer to each other than this share of the box are one. */
const weldShare = 2 ** -29;
/** A triangle has no area where its height is under this share of its longest edge. */
const leastHeightShare = 1e-9;

/** Whether each corner is a place. */
const soundCorners = (positions: Float64Array): Uint8Array => {
  const sound = new Uint8Array(positions.length / 3).fill(1);
  for (let i = 0; i < positions.length; i++)
    if (!(Math.abs(positions[i] as number) < farthest)) sound[Math.floor(i / 3)] = 0;
  return sound;
};

/** Positions from the middle of the box of the sound corners (others at nought), and the box's longest side. */
const aboutMiddle = (positions: Float64Array, sound: Uint8Array) => {
  const [low, high] = [
    [Infinity, Infinity, Infinity],
    [-Infinity, -Infinity, -Infinity],
  ] as [number[], number[]];
  for (let i = 0; i < positions.length; i++) {
    const value = positions[i] as number;
    const axis = i % 3;
    if (!sound[Math.floor(i / 3)]) continue;
    if (value < (low[axis] as number)) low[axis] = value;
    if (value > (high[axis] as number)) high[axis] = value;
  }
  const middle = low.map((value, axis) => (value + (high[axis] as number)) / 2);
  const longest = Math.max(...low.map((value, axis) => (high[axis] as number) - value));
  const about = new Float64Array(positions.length);
  for (let i = 0; i < positions.length; i++)
    if (sound[Math.floor(i / 3)]) about[i] = (positions[i] as number) - (middle[i % 3] as number);
  return { about, longest };
};

/** Whether a triangle has an area, tiny ones in proportion to their edges. */
const hasArea = (p: Float64Array, a: number, b: number, c: number): boolean => {
  const ux = (p[b * 3] as number) - (p[a * 3] as number);
  const uy = (p[b * 3 + 1] as number) - (p[a * 3 + 1] as number);
  const uz = (p[b * 3 + 2] as number) - (p[a * 3 + 2] as number);
  const vx = (p[c * 3] as number) - (p[a * 3] as number);
  const vy = (p[c * 3 + 1] as number) - (p[a * 3 + 1] as number);
  const vz = (p[c * 3 + 2] as number) - (p[a * 3 + 2] as number);
  const cross = Math.sqrt((uy * vz - uz * vy) ** 2 + (uz * vx - ux * vz) ** 2 + (ux * vy - uy * vx) ** 2);
  const longest2 = Math.max(ux * ux + uy * uy + uz * uz, vx * vx + vy * vy + vz * vz);
  return cross > leastHeightShare * longest2;
};

/** The mesh with only those corners that its triangles name. */
const withUsedCorners = (positions: Float64Array, indices: Uint32Array): Pick<RawMesh, 'positions' | 'indices'> => {
  const numberOf = new Int32Array(positions.length / 3).fill(-1);
  const used = new Float64Array(positions.length);
  const named = new Uint32Array(indices.length);
  let count = 0;
  for (let i = 0; i < indices.length; i++) {
    const corner = indices[i] as number;
    if ((numberOf[corner] as number) < 0) {
      for (let k = 0; k < 3; k++) used[count * 3 + k] = positions[corner * 3 + k] as number;
      numberOf[corner] = count++;
    }
    named[i] = numberOf[corner] as number;
  }
  return { positions: used.slice(0, count * 3), indices: named };
};

/**
 * Makes a mesh sound: triangles with corners that are no places or without an area are left out, corners that meet made
 * one, corners that nothing names dropped.
 *
 * @param leftOut takes a sentence about what was broken
 * @throws ScanError when nothing is left
 */
export const tidyMesh = ({ positions, indices, colours }: RawMesh, leftOut: string[]): RawMesh => {
  const sound = soundCorners(positions);
  const { about, longest } = aboutMiddle(positions, sound);
  if (!(longest > 0)) throw new ScanError('It holds no triangle with an area');
  const { groupOfCorner, groupCount } = weldCorners(about, longest * weldShare);
  const firstSound = new Uint32Array(groupCount);
  // backwards, so that the first one stays; a broken corner may share a group with a sound one at the middle
  for (let corner = sound.length - 1; corner >= 0; corner--)
    if (sound[corner]) firstSound[groupOfCorner[corner] as number] = corner;
  const kept = new Uint32Array(indices.length);
  const keptColours = colours && new Uint8Array(colours.length);
  let [at, broken] = [0, 0];
  for (let t = 0; t < indices.length; t += 3) {
    const [a, b, c] = [indices[t] as number, indices[t + 1] as number, indices[t + 2] as number];
    if (!sound[a] || !sound[b] || !sound[c]) {
      broken++;
      continue;
    }
    const [ga, gb, gc] = [groupOfCorner[a] as number, groupOfCorner[b] as number, groupOfCorner[c] as number];
    if (ga === gb || gb === gc || gc === ga || !hasArea(about, a, b, c)) continue;
    kept[at] = firstSound[ga] as number;
    kept[at + 1] = firstSound[gb] as number;
    kept[at + 2] = firstSound[gc] as number;
    if (colours && keptColours) for (let k = 0; k < 3; k++) keptColours[at + k] = colours[t + k] as number;
    at += 3;
  }
  if (at === 0) throw new ScanError('It holds no triangle with an area');
  if (broken > 0) leftOut.push(`${counted(broken, 'triangle')} with broken corners left out`);
  return { ...withUsedCorners(positions, kept.slice(0, at)), colours: keptColours?.slice(0, at) ?? null };
};
