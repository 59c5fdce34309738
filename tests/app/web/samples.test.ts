import { describe, expect, it } from 'vitest';
import { lessons, samples } from '../../../app/web/state/samples.ts';
import { isInFrame } from '../../../core/camera/camera-view.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { distance, normalize, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { patchView } from '../../../core/readings/patch-view.ts';
import { shadowReading } from '../../../core/readings/shadow-reading.ts';
import { trianglesOfSetup } from '../../../core/setup/detail.ts';
import { checkReferences } from '../../../core/setup/references.ts';
import type { Frame, Position, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { meter } from '../../../core/trace/meter.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import type { StageSubject } from '../../../core/world/stage.ts';
import { buildWorld } from '../../../core/world/world.ts';

const taught = await Promise.all(
  lessons.map(async ({ id, load }) => {
    const setup = await load();
    if (!setup.lesson) throw new Error(`${id} has no lesson`);
    return { id, setup, steps: setup.lesson.steps };
  }),
);

const shown = await Promise.all(samples.map(async ({ id, load }) => ({ id, setup: await load() })));

const schemeOf = ({ schemes }: Setup, id: string): Scheme => {
  const scheme = schemes.find((each) => each.id === id);
  if (!scheme) throw new Error(`no scheme ${id}`);
  return scheme;
};

/** What a locked camera keeps from tile to tile. */
const exposureOf = ({ purpose, aperture, iso, seconds, whiteBalance }: Frame) =>
  JSON.stringify([purpose, aperture, iso, seconds, whiteBalance]);

describe('the samples', () => {
  it('open on the three stones', () => {
    expect(samples[0]?.id).toBe('three-stones');
  });

  it('have ids and names of their own, lessons included', () => {
    const entries = [...samples, ...lessons];
    expect(new Set(entries.map(({ id }) => id)).size).toBe(entries.length);
    expect(new Set(entries.map(({ name }) => name)).size).toBe(entries.length);
    // the drystone wall is sample and lesson in one
    const setupIds = new Set([...shown.map(({ setup }) => setup.id), ...taught.map(({ setup }) => setup.id)]);
    expect(setupIds.size).toBe(entries.length - 1);
  });

  it.each(shown)('$id is a good setup', ({ setup }) => {
    expect(() => checkReferences(setup)).not.toThrow();
  });

  it.each(shown)(
    '$id: two to six schemes to compare, a paragraph that says what it is about, under 40,000 triangles',
    ({ setup }) => {
      expect(setup.schemes.length).toBeGreaterThanOrEqual(2);
      expect(setup.schemes.length).toBeLessThanOrEqual(6);
      expect(setup.note.length).toBeGreaterThan(120);
      expect(setup.note).not.toContain('\n');
      const { subjects, relief } = trianglesOfSetup(setup);
      expect(subjects + relief).toBeLessThan(40_000);
    },
  );
});

describe('the sky of a sample', () => {
  const all = [...shown, ...taught];

  it.each(all)('$id: is no darker than a natural one', ({ setup }) => {
    // 22.0 mag/arcsec2 is 1.713e-4 cd/m2 (10.8e4 * 10^(-0.4 m)), times pi for an even sky: 0.00054 lx, from memory
    const darkestLux = Math.PI * 1.08e5 * 10 ** (-0.4 * 22);
    expect(setup.place.skylight.illuminanceLux).toBeGreaterThanOrEqual(darkestLux);
  });

  it.each(all)('$id: is outshone only where the lesson is about too long a count', ({ id, setup }) => {
    const told = setup.schemes.filter((scheme) =>
      reportScheme(setup, scheme).cautions.some(({ code }) => code === 'land-over-sky'),
    );
    expect(told.map((scheme) => scheme.id)).toEqual(id === 'reflectance' ? ['for-crag'] : []);
  });
});

describe('the lessons', () => {
  it('are eight, and at least five ask for a shadow first', () => {
    expect(taught.length).toBe(8);
    const asking = taught.filter(({ steps }) => steps.some(({ predict }) => predict));
    expect(asking.length).toBeGreaterThanOrEqual(5);
  });

  it.each(taught)('$id: two to six schemes and three to six steps, and every scheme is shown', ({ setup, steps }) => {
    expect(setup.schemes.length).toBeGreaterThanOrEqual(2);
    expect(setup.schemes.length).toBeLessThanOrEqual(6);
    expect(steps.length).toBeGreaterThanOrEqual(3);
    expect(steps.length).toBeLessThanOrEqual(6);
    const shown = new Set(steps.flatMap(({ schemeIds }) => schemeIds));
    expect([...shown].sort()).toEqual(setup.schemes.map(({ id }) => id).sort());
    expect(steps.some(({ schemeIds }) => schemeIds.length > 1)).toBe(true);
  });

  it.each(taught)('$id: under 40,000 triangles', ({ setup }) => {
    const { subjects, relief } = trianglesOfSetup(setup);
    expect(subjects + relief).toBeLessThan(40_000);
  });

  it.each(taught)('$id: camera and exposure are the same in all schemes', ({ setup }) => {
    for (const { camera } of setup.schemes) expect(camera).toBeNull();
    // by purpose: a scheme with two painted frames exposes both alike
    const exposures = setup.schemes.map(({ frames }) => [...new Set(frames.map(exposureOf))].sort());
    for (const each of exposures) expect(each).toEqual(exposures[0]);
  });

  it.each(taught)('$id: no lamp stands in the picture', ({ setup }) => {
    for (const scheme of setup.schemes) {
      const { view } = buildWorld(setup, scheme);
      const places = scheme.frames.flatMap(({ passes }) => passes.flatMap(({ waypoints }) => waypoints));
      expect(places.length).toBeGreaterThan(0);
      for (const { position } of places) expect(isInFrame(view, worldFromDocument(position))).toBe(false);
    }
  });
});

const questions = taught.flatMap(({ id, setup, steps }) =>
  steps.flatMap(({ predict, schemeIds }) =>
    predict ? [{ id, setup, ...predict, schemeId: schemeIds[0] as string }] : [],
  ),
);

/** Where a question's shadow ends, in world axes, by the reading that the page reveals. */
const tipOf = ({ setup, passId, subjectId, schemeId }: (typeof questions)[number]) => {
  const scheme = schemeOf(setup, schemeId);
  const { stage, view } = buildWorld(setup, scheme);
  const pass = scheme.frames.flatMap(({ passes }) => passes).find(({ id }) => id === passId);
  const lamp = worldFromDocument(pass?.waypoints[0]?.position ?? [0, 0, 0]);
  const subject = stage.subjects.find(({ id }) => id === subjectId) as StageSubject;
  const { tip } = shadowReading(stage, view, subject, lamp);
  return { lamp, subject, view, tip: tip && worldFromDocument([...tip, 0]) };
};

/** The same by hand: each corner of the subject carried on along its ray until it meets the ground; the farthest counts. */
const farthestByHand = (lamp: Vec3, { points }: StageSubject): Vec3 => {
  let [farthest, most]: [Vec3, number] = [[0, 0, 0], -1];
  for (let i = 0; i < points.length; i += 3) {
    const [x, y, z] = [points[i], Math.max(points[i + 1] as number, 0), points[i + 2]] as [number, number, number];
    const share = lamp[1] / (lamp[1] - y);
    const place: Vec3 = [lamp[0] + (x - lamp[0]) * share, 0, lamp[2] + (z - lamp[2]) * share];
    const away = Math.hypot(place[0] - lamp[0], place[2] - lamp[2]);
    if (away > most) [farthest, most] = [place, away];
  }
  return farthest;
};

describe('where does the shadow end?', () => {
  it.each(questions)(
    '$id: the tip lies on the ground that the picture shows, within 15 m of what throws it',
    (question) => {
      const { lamp, subject, view, tip } = tipOf(question);
      expect(tip).not.toBeNull();
      if (!tip) return;
      expect(lamp[1]).toBeGreaterThan(subject.topMetres);
      expect(isInFrame(view, tip)).toBe(true);
      const [x, z] = [subject.points[0] as number, subject.points[2] as number];
      expect(Math.hypot(tip[0] - x, tip[2] - z)).toBeLessThan(15);
    },
  );

  it.each(questions)('$id: the tip is that of similar triangles (1 mm)', (question) => {
    const { lamp, subject, tip } = tipOf(question);
    expect(tip && distance(tip, farthestByHand(lamp, subject))).toBeLessThan(0.001);
  });
});

const patched = taught.filter(({ setup }) => setup.patch);

describe('the patches', () => {
  it('are drawn where relief is the point', () => {
    const ids = patched.map(({ id }) => id);
    expect(ids).toEqual(['flat-to-relief', 'high-and-low', 'out-from-the-wall', 'hard-and-soft']);
  });

  it.each(patched)('$id: all corners are in the picture, and hundreds of rays reach it', ({ setup }) => {
    const { stage, view } = buildWorld(setup, setup.schemes[0] as Scheme);
    const corners = setup.patch?.corners.map(worldFromDocument) ?? [];
    for (const corner of corners) expect(isInFrame(view, corner)).toBe(true);
    expect(patchView(stage, view, corners).length).toBeGreaterThan(300);
  });
});

/** Dose that the first scheme's pass of that name leaves at a place, lux seconds; toward the lamp unless a way is given. */
const doseAt = (lessonId: string, schemeId: string, place: Position, passId = 'key', facing?: Position): number => {
  const { setup } = taught.find(({ id }) => id === lessonId) as (typeof taught)[number];
  const scheme = schemeOf(setup, schemeId);
  const { stage, frames } = buildWorld(setup, scheme);
  const light = frames
    .flatMap(({ lights }) => lights)
    .find(({ id, source }) => id === passId && source.kind === 'lamp');
  const pass = scheme.frames.flatMap(({ passes }) => passes).find(({ id }) => id === passId);
  if (!light || !pass) throw new Error(`no pass ${passId}`);
  const point = worldFromDocument(place);
  const lamp = worldFromDocument(pass.waypoints[0]?.position ?? [0, 0, 0]);
  const normal = facing ? worldFromDocument(facing) : normalize(sub(lamp, point));
  return meter(stage, light.source, point, normal) * luminanceOfLinearSrgb(light.strength) * light.seconds;
};

describe('what the lessons say', () => {
  it('flat to relief: the middle of the wall gets the same dose in every scheme (0.1 stop)', () => {
    const doses = ['front', 'three-quarter', 'side', 'side-low'].map((scheme) =>
      doseAt('flat-to-relief', scheme, [0, 6.1, 1], 'key', [0, -1, 0]),
    );
    for (const dose of doses) expect(Math.abs(Math.log2(dose / (doses[0] as number)))).toBeLessThan(0.1);
  });

  it('hard and soft: the snow in front gets the same dose in every scheme (0.1 stop)', () => {
    const doses = ['torch', 'small-panel', 'cloth', 'cloth-far'].map((scheme) =>
      doseAt('hard-and-soft', scheme, [0.2, 4.4, 0.001], 'key', [0, 0, 1]),
    );
    for (const dose of doses) expect(Math.abs(Math.log2(dose / (doses[0] as number)))).toBeLessThan(0.1);
  });

  it('near and far: twice as far leaves a quarter over the middle hive, four counts bring it back (2 %)', () => {
    const [near, doubled, four, far, zoomed] = [
      'two-metres',
      'doubled',
      'doubled-four',
      'eight-metres',
      'eight-zoomed',
    ].map((scheme) => doseAt('near-and-far', scheme, [0.09, 5.51, 0.78])) as [number, number, number, number, number];
    // above the hive rather than in it: a few centimetres off the line that was doubled
    expect(doubled / near).toBeGreaterThan(0.25 * 0.98);
    expect(doubled / near).toBeLessThan(0.25 * 1.02);
    for (const dose of [four, far, zoomed]) expect(Math.abs(dose / near - 1)).toBeLessThan(0.02);
  });

  it('ratio ladder: each fill is half of the one before (rel 1e-9)', () => {
    const doses = [0, 1, 2, 3, 4].map((stops) => doseAt('ratio-ladder', `fill-${stops}`, [0, 5.7, 1.19], 'fill'));
    doses.forEach((dose, i) => {
      expect(dose / ((doses[0] as number) / 2 ** i)).toBeCloseTo(1, 9);
    });
  });

  it('reflectance: the bothy returns nine times as much as the crag, and so do the counts (5 %)', () => {
    const setup = (taught.find(({ id }) => id === 'reflectance') as (typeof taught)[number]).setup;
    const luminousOf = (value: number | readonly [number, number, number]) =>
      typeof value === 'number' ? value : luminanceOfLinearSrgb(value);
    const [bothy, crag] = ['bothy', 'crag'].map((id) => setup.subjects.find((subject) => subject.id === id));
    const rocks = crag?.parts.map(({ finish }) => luminousOf((finish ?? crag.finish).reflectance)) ?? [];
    const rock = rocks.reduce((sum, value) => sum + value, 0) / rocks.length;
    const ratio = luminousOf(bothy?.finish.reflectance ?? 0) / rock;
    expect(Math.abs(ratio / (28 / 3) - 1)).toBeLessThan(0.05);
  });
});
