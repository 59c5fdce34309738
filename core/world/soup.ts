import type { Mesh } from '../geometry/mesh.ts';
import type { Finish } from '../setup/schema/setup.ts';
import { type StageFinish, stageFinishOf } from './stage-finish.ts';

/** Triangles, and what each is tinted with: three numbers a triangle, or null. */
export interface TintedMesh {
  readonly mesh: Mesh;
  readonly tints: Float32Array | null;
}

/** A mesh with what it belongs to. */
export interface SoupEntry extends TintedMesh {
  /** Index into the soup's finishes. */
  readonly finish: number;
  /** Index of the subject, -1 for the ground and what is strewn on it. */
  readonly subject: number;
  readonly isSolid: boolean;
}

/** All meshes of a stage, to be joined. */
export class Soup {
  readonly entries: SoupEntry[] = [];
  readonly finishes: StageFinish[] = [];
  private readonly known = new Map<string, number>();

  add(tinted: TintedMesh, finish: Finish, subject: number, isSolid: boolean): void {
    const key = JSON.stringify(finish);
    let index = this.known.get(key);
    if (index === undefined) {
      index = this.finishes.push(stageFinishOf(finish)) - 1;
      this.known.set(key, index);
    }
    this.entries.push({ ...tinted, finish: index, subject, isSolid });
  }
}
