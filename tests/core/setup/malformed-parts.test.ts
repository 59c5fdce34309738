import { describe, expect, it } from 'vitest';
import { part } from '../../../core/setup/schema/part.ts';

/** Where a part is refused and with what words; null when it is taken. */
const refusal = (raw: object): string | null => {
  const read = part.safeParse(raw);
  const issue = read.error?.issues[0];
  return issue ? `${issue.path.join('.')}: ${issue.message}` : null;
};

const square = (u: number, v: number, side: number) => [
  [u, v],
  [u + side, v],
  [u + side, v + side],
  [u, v + side],
];
const prism = (outline: unknown, holes: unknown = []) => refusal({ kind: 'prism', outline, holes, heightMetres: 1 });

describe('an outline or a hole that is none, judged together', () => {
  const fault = 'must not cross, touch or repeat itself';
  it('a hole over an outline that lies on a line: the outline is named', () => {
    const line = [
      [0, 0],
      [0, 1],
      [0, 2],
    ];
    expect(prism(line, [square(-0.5, 0.5, 1)])).toBe(`outline: ${fault}`);
  });
  it('a hole that repeats a point on the outline’s rim: the hole is named', () => {
    const hole = [
      [0, 1],
      [0, 1],
      [2, 3],
    ];
    expect(prism(square(0, 0, 4), [hole])).toBe(`holes.0: ${fault}`);
  });
});

describe('an outline', () => {
  const itself = 'outline: must not cross, touch or repeat itself';
  it.each([
    [
      'a bow',
      [
        [0, 0],
        [1, 1],
        [1, 0],
        [0, 1],
      ],
    ],
    [
      'a point twice in a row',
      [
        [0, 0],
        [1, 0],
        [1, 0],
        [0, 1],
      ],
    ],
    [
      'the first point again at the end',
      [
        [0, 0],
        [1, 0],
        [0, 1],
        [0, 0],
      ],
    ],
    [
      'three points on a line',
      [
        [0, 0],
        [1, 0],
        [2, 0],
      ],
    ],
    [
      'a spike that turns straight back',
      [
        [0, 0],
        [2, 0],
        [1, 0],
        [1, 1],
      ],
    ],
    [
      'a point on another stretch',
      [
        [0, 0],
        [2, 0],
        [2, 2],
        [1, 0],
        [0, 2],
      ],
    ],
    [
      'sides a twentieth of a millimetre apart',
      [
        [0, 0],
        [1, 0],
        [1, 0.00005],
        [0, 0.00005],
      ],
    ],
  ])('is refused: %s', (_, outline) => {
    expect(prism(outline)).toBe(itself);
  });

  it.each([
    [
      'sides two tenths of a millimetre apart',
      [
        [0, 0],
        [1, 0],
        [1, 0.0002],
        [0, 0.0002],
      ],
    ],
    [
      'a point in the middle of a side',
      [
        [0, 0],
        [1, 0],
        [2, 0],
        [2, 2],
      ],
    ],
    ['clockwise', [...square(0, 0, 1)].reverse()],
  ])('is taken: %s', (_, outline) => {
    expect(prism(outline)).toBeNull();
  });
});

describe('holes', () => {
  const outer = square(0, 0, 10);
  it.each([
    ['outside', [square(11, 1, 1)], 'holes.0: must lie inside the outline'],
    ['across the rim', [square(9, 1, 3)], 'holes.0: must lie inside the outline'],
    ['on the rim', [square(0, 1, 3)], 'holes.0: must lie inside the outline'],
    ['larger than the outline', [square(-1, -1, 12)], 'holes.0: must lie inside the outline'],
    ['the same twice', [square(1, 1, 2), square(1, 1, 2)], 'holes.1: must not run into another hole'],
    ['one in another', [square(1, 1, 5), square(2, 2, 1)], 'holes.1: must not run into another hole'],
    ['one round another', [square(2, 2, 1), square(1, 1, 5)], 'holes.1: must not run into another hole'],
    ['two that overlap', [square(1, 1, 3), square(3, 3, 3)], 'holes.1: must not run into another hole'],
  ])('are refused: %s', (_, holes, words) => {
    expect(prism(outer, holes)).toBe(words);
  });

  it('are taken where they lie apart', () => {
    expect(prism(outer, [square(1, 1, 3), square(5, 1, 3), square(1, 5, 3)])).toBeNull();
  });
});

describe('a profile', () => {
  const turned = (profile: unknown, closed = false) => refusal({ kind: 'turned', profile, closed });
  const itself = 'profile: must not cross, touch or repeat itself, nor its lids';
  it.each([
    [
      'that crosses itself',
      [
        [1, 0],
        [2, 1],
        [2, 0],
        [1, 1],
      ],
      false,
      itself,
    ],
    [
      'whose lid cuts through it',
      [
        [1, 0],
        [0.5, -1],
        [0.5, 1],
      ],
      false,
      itself,
    ],
    [
      'that is one flat disc',
      [
        [0, 1],
        [1, 1],
      ],
      false,
      itself,
    ],
    [
      'that repeats a point',
      [
        [1, 0],
        [1, 0],
        [1, 1],
      ],
      false,
      itself,
    ],
    [
      'on the axis',
      [
        [0, 0],
        [0, 1],
      ],
      false,
      'profile: must stand off the axis by at least 0.001 metres',
    ],
    [
      'closed, of two points',
      [
        [1, 0],
        [2, 1],
      ],
      true,
      'profile: must have at least 3 points where it is closed',
    ],
    [
      'closed, with the first point again',
      [
        [1, 0],
        [2, 0],
        [2, 1],
        [1, 0],
      ],
      true,
      itself,
    ],
  ])('is refused: %s', (_, profile, closed, words) => {
    expect(turned(profile, closed)).toBe(words);
  });

  it.each([
    [
      'a cone from its foot',
      [
        [1, 0],
        [0, 1],
      ],
      false,
    ],
    [
      'a cup',
      [
        [0, 0],
        [1, 0],
        [1, 1],
        [0.9, 1],
        [0.9, 0.1],
        [0, 0.1],
      ],
      false,
    ],
    [
      'a ring',
      [
        [1, 0],
        [2, 0],
        [2, 1],
      ],
      true,
    ],
  ])('is taken: %s', (_, profile, closed) => {
    expect(turned(profile, closed)).toBeNull();
  });
});

describe('sections of a loft', () => {
  it('are refused less than a tenth of a millimetre apart', () => {
    const at = (northMetres: number) => ({ northMetres, outline: square(0, 0, 1) });
    const loft = (...north: number[]) => refusal({ kind: 'loft', sections: north.map(at) });
    expect(loft(0, 0.00005)).toBe('sections: must go from south to north');
    expect(loft(1, 0)).toBe('sections: must go from south to north');
    expect(loft(0, 0.0002)).toBeNull();
  });
});

describe('an opening under a gable', () => {
  const wall = { kind: 'wall', widthMetres: 10, thicknessMetres: 0.5, heightMetres: 3, gableMetres: 4 };
  const withHead = (head: string, acrossMetres: number, heightMetres: number) =>
    refusal({ ...wall, openings: [{ acrossMetres, sillMetres: 1, widthMetres: 2, heightMetres, head }] });
  const outside = 'openings.0: must lie inside the wall';

  // The slope falls 4 m over 5 m. A circle of radius r about (x, y) keeps 5 mm clear of it where
  // 4 x + 5 y + sqrt(41) (r + 0.005) is at most 4 x 0 + 5 x 7.
  it('with a round head may come within 5 mm of the slope: the distance of its centre less its radius', () => {
    const springAt = (across: number) => (35 - Math.sqrt(41) * (1 + 0.005) - 4 * across) / 5;
    for (const across of [0, 0.5, 1.5, -1.5]) {
      // the head’s radius over the springing, less the sill: both 1 m
      const height = springAt(Math.abs(across)) + 1 - 1;
      expect(withHead('round', across, height - 1e-6)).toBeNull();
      expect(withHead('round', across, height + 1e-6)).toBe(outside);
    }
  });

  it('with a flat head touches with its upper corner', () => {
    // the corner at 1.5 + 1 m across: the slope is there at 7 - 4/5 x 2.5 = 5 m; 5 mm square to it are 6.403 mm upright
    const limit = 5 - (0.005 * Math.sqrt(41)) / 5 - 1;
    expect(withHead('flat', 1.5, limit - 1e-6)).toBeNull();
    expect(withHead('flat', 1.5, limit + 1e-6)).toBe(outside);
  });

  it('with a pointed head in the middle touches with its tip when the slope is flatter than its arcs', () => {
    // the arcs rise at the tip by 1 / sqrt 3 = 0.58, the slope falls by 0.8: so the flank touches, not the tip
    const clear = (spring: number) => (35 - 4 * -1 - 5 * spring) / Math.sqrt(41) - 2;
    // flank: a circle of radius 2 about the west springing, (-1, spring)
    const spring = (39 - Math.sqrt(41) * 2.005) / 5;
    expect(clear(spring)).toBeCloseTo(0.005, 12);
    const height = spring + Math.sqrt(3) - 1;
    expect(withHead('pointed', 0, height - 1e-6)).toBeNull();
    expect(withHead('pointed', 0, height + 1e-6)).toBe(outside);
  });

  it('needs a jamb under its head', () => {
    expect(withHead('round', 0, 1)).toBe('openings.0: must be higher than 1.00 metres for its round head');
    expect(withHead('round', 0, 1.002)).toBeNull();
  });
});
