import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import {
  addHazard,
  moveHazard,
  removeHazard,
  renameHazard,
  resizeHazard,
} from '../../../app/web/state/edits/hazard-edits.ts';
import { createAppStore } from '../../../app/web/state/store.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const { setup: marked, hazardId } = addHazard(stones, 'side', 'Bog');

describe('hazard edits', () => {
  it('marks one beside the picture, to the right and half-way to what is looked at, that the parser takes', () => {
    const { position, aim } = stones.camera;
    const [hazard] = marked.hazards;
    // the camera looks north: right is east
    expect(hazard?.position[1]).toBeCloseTo((position[1] + aim[1]) / 2, 0);
    expect(hazard?.position[0]).toBeGreaterThan(position[0] + 2);
    expect(parseSetup(formatSetup(marked))).toEqual(marked);
    const again = addHazard(marked, 'side', 'Bog');
    expect(again.setup.hazards.map(({ name }) => name)).toEqual(['Bog', 'Bog 2']);
    expect(parseSetup(formatSetup(again.setup))).toEqual(again.setup);
  });

  it('moves, resizes, renames and takes away; what changes nothing gives the same setup', () => {
    expect(moveHazard(marked, hazardId, [1.234, -6000]).hazards[0]?.position).toEqual([1.23, -5000]);
    expect(resizeHazard(marked, hazardId, 0.1).hazards[0]?.radiusMetres).toBe(0.5);
    expect(resizeHazard(marked, hazardId, 900).hazards[0]?.radiusMetres).toBe(500);
    expect(renameHazard(marked, hazardId, ' Deep\nwater ').hazards[0]?.name).toBe('Deep water');
    expect(renameHazard(marked, hazardId, ' ')).toBe(marked);
    expect(resizeHazard(marked, hazardId, 2)).toBe(marked);
    expect(moveHazard(marked, 'none', [0, 0])).toBe(marked);
    expect(removeHazard(marked, hazardId).hazards).toEqual([]);
    expect(removeHazard(marked, 'none')).toBe(marked);
  });

  it('refuses the 65th', () => {
    let setup = stones;
    for (let n = 0; n < 64; n++) setup = addHazard(setup, 'side', 'Hole').setup;
    expect(() => addHazard(setup, 'side', 'Hole')).toThrow(EditRefused);
  });

  it('undo takes the mark away, and its selection with it', () => {
    const store = createAppStore(stones);
    store.getState().edit(() => marked);
    store.getState().select({ kind: 'hazard', hazardId });
    store.getState().undo();
    expect(store.getState().history.present).toBe(stones);
    expect(store.getState().selection).toEqual({ kind: 'hazards' });
  });
});
