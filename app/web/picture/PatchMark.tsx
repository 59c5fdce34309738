import { type KeyboardEvent, useMemo } from 'react';
import { type PictureQuad, patchInPicture } from '../../../core/readings/patch-corners.ts';
import type { Patch, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { useApp } from '../state/app-store.ts';
import { removePatch, setPatch } from '../state/edits/patch-edits.ts';
import { useSession } from '../state/session.ts';
import { linePath } from './line-path.ts';
import { PatchCorner } from './PatchCorner.tsx';
import { PatchField } from './PatchField.tsx';
import { PatchNumbers } from './PatchNumbers.tsx';
import { arrowStep, cornerBehind, movedQuad, patchBehind, resizedQuad, worldCorners } from './patch-moves.ts';
import { usePictureDrag } from './use-picture-drag.ts';

interface PatchMarkProps {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly patch: Patch;
  readonly size: readonly [width: number, height: number];
  readonly pixel: number;
}

/** The patch whose relief is read, as the camera sees it. In the viewfinder it can be drawn and moved, by hand and by keys. */
export const PatchMark = ({ setup, scheme, patch, size, pixel }: PatchMarkProps) => {
  const world = useMemo(() => buildWorld(setup, scheme), [setup, scheme]);
  const quad = useMemo(() => patchInPicture(world.view, worldCorners(patch)), [world, patch]);
  const isEditable = useSession((state) => state.room === 'viewfinder');
  const { edit } = useApp.getState();
  const put = (corners: Patch['corners'] | null, run?: string) => {
    if (corners) edit((present) => setPatch(present, corners), run);
  };
  const drag = usePictureDrag(size, quad?.[0] ?? [0, 0], ([x, y]) => {
    if (quad) put(patchBehind(world, movedQuad(quad, x - quad[0][0], y - quad[0][1])));
  });
  if (!quad) return null;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      edit(removePatch);
      document.getElementById('patch-button')?.focus();
      return;
    }
    const step = arrowStep(event);
    if (!step) return;
    event.preventDefault();
    const next: PictureQuad = event.altKey ? resizedQuad(quad, step[0], step[1]) : movedQuad(quad, step[0], step[1]);
    put(patchBehind(world, next), 'patch');
  };
  const path = `${linePath(quad.flat(), size)}Z`;
  return (
    <g className={isEditable ? 'patch patch-editable' : 'patch'}>
      {isEditable && <PatchField size={size} onDraw={(drawn) => put(patchBehind(world, drawn))} />}
      <path className="patch-case" d={path} />
      <path className="patch-line" d={path} />
      {isEditable && (
        <path
          id="patch"
          className="patch-body"
          d={path}
          role="button"
          tabIndex={0}
          aria-label="Patch. Arrow keys move it, Alt with arrows makes it larger or smaller, Delete removes it."
          onKeyDown={onKeyDown}
          {...drag}
        />
      )}
      {isEditable &&
        quad.map((place, c) => (
          <PatchCorner
            // biome-ignore lint/suspicious/noArrayIndexKey: the four corners never change places
            key={c}
            number={c + 1}
            place={place}
            size={size}
            pixel={pixel}
            onMove={(to, run) => put(cornerBehind(world, patch, quad, c, to), run)}
          />
        ))}
      {isEditable && <PatchNumbers scheme={scheme} quad={quad} size={size} pixel={pixel} />}
    </g>
  );
};
