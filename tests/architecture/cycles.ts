import type { Import } from './read-imports.ts';

/**
 * A ring of files that import each other, first file repeated at the end, or null. A worker that is started by its
 * address runs by itself, so it closes no ring.
 */
export const findCycle = (imports: readonly Import[]): string[] | null => {
  const graph = new Map<string, string[]>();
  for (const { file, kind, target } of imports)
    if (kind === 'file') graph.set(file, [...(graph.get(file) ?? []), target]);
  const done = new Set<string>();
  const trail: string[] = [];
  const visit = (file: string): string[] | null => {
    if (trail.includes(file)) return [...trail.slice(trail.indexOf(file)), file];
    if (done.has(file)) return null;
    trail.push(file);
    for (const next of graph.get(file) ?? []) {
      const ring = visit(next);
      if (ring) return ring;
    }
    trail.pop();
    done.add(file);
    return null;
  };
  for (const file of graph.keys()) {
    const ring = visit(file);
    if (ring) return ring;
  }
  return null;
};
