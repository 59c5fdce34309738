import type { PassKey } from '../../readings/walk-lines.ts';
import type { CardRow } from '../card-row.ts';

/** A pass in one text: ids of passes repeat from frame to frame. */
export type PassPlaceKey = string;

export const keyOfWalkEnd = (key: PassKey | null): PassPlaceKey | null => key && `${key.frameId} ${key.passId}`;
export const keyOfRow = ({ frameId, passId }: CardRow): PassPlaceKey => `${frameId} ${passId}`;
