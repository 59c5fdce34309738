import type { PictureQuad } from '../../../core/readings/patch-corners.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { useReports } from '../state/reports.ts';
import { percentText } from '../ui/words.ts';

interface PatchNumbersProps {
  readonly scheme: Scheme;
  readonly quad: PictureQuad;
  readonly size: readonly [width: number, height: number];
  readonly pixel: number;
}

/** What the selected lamp, or the only one, makes of the patch; written under it, or over it where there is no room. */
export const PatchNumbers = ({ scheme, quad, size, pixel }: PatchNumbersProps) => {
  const selection = useApp((state) => state.selection);
  const report = useReports((state) => state.byScheme[scheme.id]);
  const readings = report?.frames.flatMap(({ id, passes }) => passes.map((pass) => ({ frameId: id, ...pass }))) ?? [];
  const isSelected = ({ frameId, passId }: (typeof readings)[number]) =>
    selection?.kind === 'pass' && selection.frameId === frameId && selection.passId === passId;
  const reading = readings.find(isSelected) ?? (readings.length === 1 ? readings[0] : null);
  const patch = reading?.relief.patch;
  if (!patch) return null;
  const bottom = Math.max(...quad.map(([, y]) => y)) * size[1];
  const top = Math.min(...quad.map(([, y]) => y)) * size[1];
  const left = Math.min(...quad.map(([x]) => x)) * size[0];
  const y = bottom + 20 * pixel < size[1] ? bottom + 16 * pixel : Math.max(top - 7 * pixel, 16 * pixel);
  const x = Math.min(Math.max(left, 6 * pixel), size[0] - 200 * pixel);
  return (
    <text className="patch-numbers" x={x} y={y} fontSize={13 * pixel}>
      contrast {patch.rmsContrast.toFixed(2)} · {percentText(patch.shadowedShare)} in shadow
    </text>
  );
};
