import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint } from '../../../core/camera/camera-view.ts';
import { aimsInPicture, mostDrawnAims } from '../../../core/passes/aims-in-picture.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const view = cameraView({
  position: [0, 1.5, 10],
  aim: [0, 1.5, 0],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 24,
});
const wall = { kind: 'box', position: [0, 0.25, 0], widthMetres: 12, depthMetres: 0.5, heightMetres: 4 };
const stage = stageWith(subjectOf('wall', [wall]));
const line = (count: number, place: (t: number) => readonly [number, number]) =>
  Array.from({ length: count }, (_, i) => place(i / (count - 1)));

describe('aimsInPicture', () => {
  it('of a straight stroke over a flat wall are its two ends, on the wall where it was drawn (1e-6)', () => {
    const aims = aimsInPicture(
      stage,
      view,
      line(80, (t) => [0.2 + 0.6 * t, 0.4]),
    );
    expect(aims).toHaveLength(2);
    expect(projectPoint(view, aims?.[0] as never)?.[0]).toBeCloseTo(0.2, 6);
    expect(projectPoint(view, aims?.[1] as never)?.[1]).toBeCloseTo(0.4, 6);
    for (const [, , z] of aims ?? []) expect(z).toBeCloseTo(0, 6);
  });

  it('of a wavy one are at most 16, in order, and every drawn place lies near the way between them', () => {
    const drawn = line(300, (t) => [0.1 + 0.8 * t, 0.45 + 0.08 * Math.sin(40 * t)]);
    const aims = aimsInPicture(stage, view, drawn) ?? [];
    expect(aims.length).toBeGreaterThan(8);
    expect(aims.length).toBeLessThanOrEqual(mostDrawnAims);
    aims.slice(1).forEach((aim, i) => {
      expect(aim[0]).toBeGreaterThan(aims[i]?.[0] as number);
    });
  });

  it('goes from the wall down to the ground, and leaves out the sky', () => {
    const down = aimsInPicture(
      stage,
      view,
      line(60, (t) => [0.5, 0.02 + 0.9 * t]),
    );
    expect(down?.[0]?.[1]).toBeLessThanOrEqual(4);
    expect(down?.at(-1)?.[1]).toBeCloseTo(0, 6);
    expect(down?.at(-1)?.[2]).toBeGreaterThan(1);
  });

  it('of a press without a drag, and of a line in the sky, are none', () => {
    expect(
      aimsInPicture(
        stage,
        view,
        line(5, () => [0.5, 0.5]),
      ),
    ).toBeNull();
    expect(
      aimsInPicture(
        stage,
        view,
        line(5, (t) => [t, 0.01]),
      ),
    ).toBeNull();
  });
});
