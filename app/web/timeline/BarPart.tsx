import type { KeyboardEvent, SVGAttributes } from 'react';
import type { Pass } from '../../../core/setup/schema/setup.ts';
import { useSvgDrag } from '../picture/use-svg-drag.ts';
import type { PassEdge } from '../state/edits/pass-times.ts';
import { dragStepSeconds, snapped, type Track } from './track.ts';

/** What is done to a pass on its clock. */
export interface BarMoves {
  readonly onSelect: () => void;
  /** `run` is set for steps by key: they belong together while the key is held. */
  readonly onMove: (edge: PassEdge, seconds: number, run?: string) => void;
}

interface BarPartProps extends BarMoves {
  readonly track: Track;
  readonly pass: Pass;
  readonly edge: PassEdge;
  /** How it is called and drawn. */
  readonly attributes: SVGAttributes<SVGGElement>;
}

const arrows: Readonly<Record<string, 1 | -1>> = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 };

/** A part of a bar that is dragged or moved by keys: an end, or all of it. Half seconds; Shift drags freely and steps by five. */
export const BarPart = ({ track, pass, edge, onSelect, onMove, attributes }: BarPartProps) => {
  const seconds = edge === 'off' ? pass.off : pass.on;
  const drag = useSvgDrag({
    at: [track.x(seconds), 0],
    onStart: onSelect,
    move: ([to], _pressed, _now, isFree) => onMove(edge, snapped(track.secondsAt(to), isFree)),
  });
  const onKeyDown = (event: KeyboardEvent) => {
    const direction = arrows[event.key];
    const isPress = event.key === 'Enter' || event.key === ' ';
    if (!direction && !isPress) return;
    event.preventDefault();
    event.stopPropagation();
    onSelect();
    if (!direction) return;
    const step = direction * dragStepSeconds * (event.shiftKey ? 10 : 1);
    onMove(edge, snapped(seconds + step, true), `${edge} ${pass.name}`);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it has a role, one of two
    <g role={edge === 'whole' ? 'button' : 'slider'} tabIndex={0} onKeyDown={onKeyDown} {...attributes} {...drag} />
  );
};
