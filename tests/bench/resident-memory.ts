import { readdirSync, readFileSync } from 'node:fs';

/** What the Chromium that this program started holds of the machine's memory, all of its processes together. */
export const residentMegabytes = (): number => {
  const field = (text: string, name: string) => Number(new RegExp(`^${name}:\\s+(\\d+)`, 'm').exec(text)?.[1]);
  const all = readdirSync('/proc').filter((name) => /^\d+$/.test(name));
  const statuses = new Map<number, string>();
  for (const pid of all)
    try {
      statuses.set(Number(pid), readFileSync(`/proc/${pid}/status`, 'utf8'));
    } catch {
      // it ended meanwhile
    }
  const isOurs = (pid: number): boolean => {
    if (pid === process.pid) return true;
    const parent = field(statuses.get(pid) ?? '', 'PPid');
    return parent > 1 && isOurs(parent);
  };
  const ours = [...statuses].filter(([pid, text]) => /^Name:\s+chrom/m.test(text) && isOurs(pid));
  return ours.reduce((sum, [, text]) => sum + (field(text, 'VmRSS') || 0), 0) / 1024;
};
