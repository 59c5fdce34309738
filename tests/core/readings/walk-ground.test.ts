import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { footprintsBetween as between, pictureWedge } from '../../../core/readings/walk-ground.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import { holds } from '../../../core/walk/convex.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const viewTo = (aim: Vec3, focalLengthMm = 24) =>
  cameraView({ position: [2, 1, 0], aim, rollRadians: 0, sensorWidthMm: 36, sensorHeightMm: 24, focalLengthMm });

describe('pictureWedge', () => {
  // 36 mm over 24 mm: 0.75 m to each side for each metre away
  it('holds what lies within 0.75 m to each side for each metre away, and nothing else', () => {
    const wedge = pictureWedge(viewTo([2, 1, -9]), 100);
    if (!wedge) throw new Error('a level camera sees a wedge');
    const places: [GroundPoint, boolean][] = [
      [[2 + 7.4, 10], true],
      [[2 - 7.4, 10], true],
      [[2 + 7.6, 10], false],
      [[2 - 7.6, 10], false],
      [[2, -1], false],
      [[2, 99], true],
      [[2, 101], false],
    ];
    for (const [place, isIn] of places) expect(holds(wedge, place)).toBe(isIn);
  });
  it('widens when the camera looks down: its lower corners lie farther round', () => {
    const wedge = pictureWedge(viewTo([2, 0.5, -1]), 100);
    expect(wedge && holds(wedge, [2 + 7.6, 10])).toBe(true);
  });
  it('is null for a camera that looks straight down, and for one so wide that it sees beside itself', () => {
    expect(pictureWedge(viewTo([2, 0, 0]), 100)).toBeNull();
    expect(pictureWedge(viewTo([2, 1, -9], 2), 100)).toBeNull();
  });
});

describe('footprintsBetween', () => {
  const footprintsBetween = (subjects: Subject[], feet: readonly Vec3[]) =>
    between(stageWith(...subjects), { subjects, scans: [] }, feet);

  const post = (name: string, up: number, heightMetres: number) =>
    subjectOf(name, [{ kind: 'box', position: [4, 0, up], widthMetres: 1, depthMetres: 2, heightMetres }]);
  const ground: Vec3[] = [
    [0, 0, 0],
    [9, 0, 0],
  ];

  it('has the hull of what stands between, and leaves out what is under a step or over the head', () => {
    const [only, ...more] = footprintsBetween(
      [post('wall', 0, 2), post('kerb', 0, 0.3), post('beam', 1.75, 1)],
      ground,
    );
    expect(more).toEqual([]);
    const easts = only?.hull.map(([east]) => east) ?? [];
    const norths = only?.hull.map(([, north]) => north) ?? [];
    expect([Math.min(...easts), Math.max(...easts)]).toEqual([3.5, 4.5].map((v) => expect.closeTo(v, 6)));
    expect([Math.min(...norths), Math.max(...norths)]).toEqual([-1, 1].map((v) => expect.closeTo(v, 6)));
  });

  it('leaves out a mound that one stands on, and keeps what stands on top of it', () => {
    const mound = subjectOf('mound', [{ kind: 'box', widthMetres: 20, depthMetres: 20, heightMetres: 3 }]);
    const feet: Vec3[] = [
      [-8, 3, 0],
      [8, 3, 0],
    ];
    expect(footprintsBetween([mound], feet)).toEqual([]);
    expect(footprintsBetween([mound, post('stone', 3, 1)], feet)).toHaveLength(1);
    expect(footprintsBetween([mound, post('stone', 3, 0.29)], feet)).toHaveLength(0);
    // seen from the level it is a thing to walk round
    expect(
      footprintsBetween(
        [mound],
        [
          [-20, 0, 0],
          [20, 0, 0],
        ],
      ),
    ).toHaveLength(1);
  });

  it('finds the stone on a slope’s higher part that one crosses from lower down', () => {
    const dome = subjectOf('dome', [
      {
        kind: 'turned',
        profile: [
          [12, 0],
          [6, 1.5],
          [0.01, 5],
        ],
        sides: 32,
      },
    ]);
    const stone = subjectOf('stone', [
      { kind: 'box', position: [0, 0, 4.9], widthMetres: 1, depthMetres: 1, heightMetres: 2 },
    ]);
    // both stand half-way up, 1.5 m; the stone begins far over their heads and stands on the top, 5 m up
    const feet: Vec3[] = [
      [-6, 1.5, 0],
      [6, 1.5, 0],
    ];
    expect(footprintsBetween([dome], feet)).toEqual([]);
    expect(footprintsBetween([dome, stone], feet)).toHaveLength(1);
  });

  const doorway = (headMetres: number) =>
    subjectOf('wall', [
      {
        kind: 'wall',
        widthMetres: 8,
        thicknessMetres: 0.4,
        heightMetres: 3,
        openings: [{ acrossMetres: 1, sillMetres: 0, widthMetres: 1.2, heightMetres: headMetres }],
      },
    ]);

  it('has two pieces of a wall with a doorway, and one of a wall with a hatch that nobody walks through upright', () => {
    const hulls = footprintsBetween([doorway(2)], ground).map(({ hull }) => hull.map(([east]) => east));
    const ends = hulls
      .map((easts) => [Math.min(...easts), Math.max(...easts)])
      .sort((a, b) => (a[0] ?? 0) - (b[0] ?? 0));
    expect(ends.flat()).toEqual([-4, 0.4, 1.6, 4].map((v) => expect.closeTo(v, 6)));
    expect(footprintsBetween([doorway(1.5)], ground)).toHaveLength(1);
  });
});
