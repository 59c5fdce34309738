import { describe, expect, it } from 'vitest';
import { depthLimits, hyperfocalMm } from '../../../core/camera/depth-of-field.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { exactFNumber } from '../../../core/units/third-stops.ts';
import { framesOf, passAt, told, withBlend } from '../support/blends.ts';
import { boxAt } from '../support/cautions.ts';

/** Two frames of a 50 mm lens at f/2.8 focused so far off; ground from near to far, and a wall 40 m away. */
const focused = (...metres: readonly number[]): Setup =>
  framesOf(
    metres.map((focusMetres) => ({ purpose: 'land', aperture: 2.8, iso: 400, focusMetres })),
    {
      camera: { position: [0, -40, 1.5], aim: [0, 0, 0], focalLengthMm: 50 },
      subjects: [boxAt('wall', [0, 0.5, 0], [6, 1, 3])],
    },
  );
const cocMm = Math.hypot(36, 24) / 1442;
const fNumber = exactFNumber(2.8);
const hyperfocal = hyperfocalMm(50, fNumber, cocMm);

describe('focus-apart', () => {
  it('is told where the far limit of one does not reach the near limit of the next, and goes where it does', () => {
    const farMm = depthLimits(50, fNumber, cocMm, 6000).farMm;
    // near = s (H - f) / (H + s - 2 f), solved for s (thin lens)
    const focusFor = (nearMm: number) => (nearMm * (hyperfocal - 100)) / (hyperfocal - 50 - nearMm) / 1000;
    const [caution, ...more] = told(focused(6, focusFor(farMm * 1.01)), 'focus-apart');
    expect(more).toEqual([]);
    expect(caution).toMatchObject({ severity: 'note', frameId: 'frame-1' });
    expect(caution?.limit).toBeCloseTo(farMm / 1000, 3);
    expect(caution?.value).toBeCloseTo((farMm * 1.01) / 1000, 3);
    expect(told(focused(6, focusFor(farMm * 0.99)), 'focus-apart')).toEqual([]);
  });

  it('goes with the frame that it asks for, and with a gap that closes', () => {
    const [caution] = told(focused(6, 20), 'focus-apart');
    const asked = Number(/focused at ([\d.]+) m/.exec(caution?.message ?? '')?.[1]);
    expect(asked).toBeGreaterThan(6);
    expect(told(focused(6, 20, asked), 'focus-apart')).toEqual([]);
    // far = s (H - f) / (H - s) and near = s (H - f) / (H + s - 2 f), solved for s (thin lens), all in metres
    const [h, f] = [hyperfocal / 1000, 0.05];
    const endingAt = (far: number) => (far * h) / (far + h - f);
    const startingAt = (near: number) => (near * (h - 2 * f)) / (h - f - near);
    // the wall ends 41 m off
    expect(told(focused(endingAt(12), startingAt(14)), 'focus-apart')).toHaveLength(1);
    expect(told(focused(endingAt(12), startingAt(11)), 'focus-apart')).toEqual([]);
  });

  it('leaves out a frame that has no weight in the blend', () => {
    const weighed = (weight: number) =>
      told(withBlend(focused(6, 20), [{ frameId: 'frame-0' }, { frameId: 'frame-1', weight }]), 'focus-apart');
    expect(weighed(0.1)).toHaveLength(1);
    expect(weighed(0)).toEqual([]);
  });

  it('says nothing of frames that see nothing but sky', () => {
    const up = framesOf(
      [6, 20].map((focusMetres) => ({ purpose: 'land', aperture: 2.8, iso: 400, focusMetres })),
      { camera: { position: [0, -40, 1.5], aim: [0, -30, 11.5], focalLengthMm: 50 } },
    );
    expect(told(up, 'focus-apart')).toEqual([]);
  });

  it('leaves out a frame that counts in the sky alone, and a gap in which nothing stands that counts', () => {
    const masked = (...where: (readonly [string, string?])[]) =>
      told(
        withBlend(
          focused(6, 20),
          where.map(([place, subjectId = null], f) => ({ frameId: `frame-${f}`, where: place, subjectId })),
        ),
        'focus-apart',
      );
    expect(masked(['everything'], ['everything'])).toHaveLength(1);
    expect(masked(['everything'], ['sky'])).toEqual([]);
    // the ground lies in the gap; the wall, 40 m off, does not
    expect(masked(['ground'], ['subject', 'wall'])).toHaveLength(1);
    expect(masked(['subject', 'wall'], ['subject', 'wall'])).toEqual([]);
  });

  it('says nothing of a gap beyond all things', () => {
    const wide = (setup: Setup) => told({ ...setup, camera: { ...setup.camera, focalLengthMm: 85 } }, 'focus-apart');
    // 85 mm at f/2.8: focused at 38 m sharp to about 69 m, at 1000 m from about 78 m on; the wall ends 41 m off
    expect(wide(focused(38, 1000))).toEqual([]);
    // focused at 20 m sharp to about 26 m
    expect(wide(focused(20, 1000))).toHaveLength(1);
  });
});

/** A post lit from so many degrees to the right of the camera's axis in each frame, 6 m away, at a level. */
const litFrom = (lights: readonly (readonly [degrees: number, levelPercent?: number])[], place: object = {}): Setup =>
  framesOf(
    lights.map(([degrees, levelPercent = 100]) => {
      const turn = (degrees * Math.PI) / 180;
      const position = [6 * Math.sin(turn), -6 * Math.cos(turn), 3.5];
      return {
        seconds: 30,
        aperture: 8,
        iso: 400,
        focusMetres: 8,
        passes: [passAt(position, [0, 0, 1], { levelPercent, name: `From ${degrees}` })],
      };
    }),
    {
      place,
      subjects: [
        { id: 'post', name: 'Post', parts: [{ kind: 'cylinder', radiusMetres: 0.3, heightMetres: 2, sides: 48 }] },
      ],
    },
  );

describe('shadows-disagree between frames', () => {
  it('keys from both front sides are told over 60 degrees apart, and go under them', () => {
    const [caution, ...more] = told(litFrom([[45], [-16]]), 'shadows-disagree');
    expect(more).toEqual([]);
    expect(caution).toMatchObject({ severity: 'note', frameId: 'frame-1', limit: 60 });
    expect(caution?.value).toBeCloseTo(61, 6);
    expect(caution?.message).toMatch(/“Post” throws two shadows 61° apart.*“From 45”.*one side.*fill/);
    expect(told(litFrom([[45], [-14]]), 'shadows-disagree')).toEqual([]);
  });

  it('light from both sides, light from behind, and a fill are meant', () => {
    expect(told(litFrom([[80], [-80]]), 'shadows-disagree')).toEqual([]);
    expect(told(litFrom([[45], [-120]]), 'shadows-disagree')).toEqual([]);
    expect(told(litFrom([[45], [-40, 25]]), 'shadows-disagree')).toEqual([]);
    expect(told(litFrom([[45], [-40, 80]]), 'shadows-disagree')).toHaveLength(1);
  });
});

describe('shadows-disagree of what stands beside the picture', () => {
  it('says nothing of a subject past the picture’s edge, though its shadows fall into the picture', () => {
    // shadows 20 and 85 degrees to the left of the camera's axis; half the picture is atan(18 / 24) = 36.9 degrees wide
    const looking = (degreesLeft: number) => {
      const [sin, cos] = [Math.sin((degreesLeft * Math.PI) / 180), Math.cos((degreesLeft * Math.PI) / 180)];
      const setup = litFrom([[20], [85]]);
      const aim: [number, number, number] = [-10 * sin, -8 + 10 * cos, 1.5];
      return told({ ...setup, camera: { ...setup.camera, aim } }, 'shadows-disagree');
    };
    expect(looking(20)[0]?.value).toBeCloseTo(65, 6);
    expect(looking(40)).toEqual([]);
  });
});

describe('shadows-disagree under masks', () => {
  it('counts what falls on ground that shows, and no frame that is limited to a subject or the sky', () => {
    const masked = (where: string, subjectId: string | null = null) =>
      told(
        withBlend(litFrom([[45], [-16]]), [{ frameId: 'frame-0' }, { frameId: 'frame-1', where, subjectId }]),
        'shadows-disagree',
      );
    expect(masked('everything')).toHaveLength(1);
    expect(masked('ground')).toHaveLength(1);
    expect(masked('subject', 'post')).toEqual([]);
    expect(masked('sky')).toEqual([]);
  });
});

describe('shadows-disagree with the moon', () => {
  const under = (bearingDegrees: number, illuminanceLux = 0.2) => ({
    moonlight: { bearingDegrees, altitudeDegrees: 40, illuminanceLux },
  });
  // the lamp stands 45 degrees to the right of a camera in the south: at bearing 135
  it('a stronger lamp is told over 90 degrees from the moon, and goes under them', () => {
    const [caution, ...more] = told(litFrom([[45]], under(226)), 'shadows-disagree');
    expect(more).toEqual([]);
    expect(caution?.value).toBeCloseTo(91, 6);
    expect(caution).toMatchObject({ severity: 'note', frameId: 'frame-0', limit: 90 });
    expect(caution?.message).toMatch(/91° away from the one in moonlight.*stops stronger.*moon’s side.*fill/);
    expect(told(litFrom([[45]], under(224)), 'shadows-disagree')).toEqual([]);
  });

  it('a lamp under the moon is its fill, and a moon that does not show contradicts nobody', () => {
    expect(told(litFrom([[45, 1]], under(300)), 'shadows-disagree')).toEqual([]);
    expect(told(litFrom([[45]], under(300, 0.001)), 'shadows-disagree')).toEqual([]);
    expect(told(litFrom([[45]], under(300)), 'shadows-disagree')).toHaveLength(1);
  });
});
