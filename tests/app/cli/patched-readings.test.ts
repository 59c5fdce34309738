import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { reportShape } from './report-shape.ts';
import { runLampfall, sample } from './run-command.ts';

describe('lampfall readings of a setup with a patch, a moon and a glow', () => {
  const folder = mkdtempSync(join(tmpdir(), 'lampfall-readings-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const setup = JSON.parse(readFileSync(sample('three-stones'), 'utf8')) as { place: object };
  const corners = [
    [-2.5, 4, 0],
    [2.5, 4, 0],
    [2.5, 7, 0],
    [-2.5, 7, 0],
  ];
  const moonlight = { bearingDegrees: 120, altitudeDegrees: 20, illuminanceLux: 0.1 };
  const glowDomes = [{ bearingDegrees: 0, widthDegrees: 40, luminanceAt10DegreesCdM2: 0.002 }];
  const file = join(folder, 'patched.json');
  writeFileSync(
    file,
    JSON.stringify({
      ...setup,
      patch: { corners },
      // the plain light that is stated here, with the scene's north to true north
      place: { ...setup.place, sky: null, northDegrees: 0, moonlight, glowDomes },
    }),
  );

  it('--json: side light shows more relief than light from the camera; moon and sky take some away; angles to both', async () => {
    const ran = await runLampfall('readings', file, '--json');
    expect(ran).toMatchObject({ exitCode: 0, stderr: '' });
    const { schemes } = reportShape.parse(JSON.parse(ran.stdout));
    const [side, front] = schemes.map(({ frames }) => frames[1]);
    // a plain moon: its light on level ground and its shadows by sine and tangent of its height
    expect(schemes[0]?.sky).toBeNull();
    expect(schemes[0]?.moon?.levelLux).toBeCloseTo(0.1 * Math.sin(Math.PI / 9), 9);
    expect(schemes[0]?.moon?.shadowLengthPerHeight).toBeCloseTo(1 / Math.tan(Math.PI / 9), 9);
    expect(schemes[0]?.moon?.shadowBearingDegrees).toBeCloseTo(300, 9);
    // the lamp's 8 s of light against the moon's in the frame's 10 s
    const { target, overMoonStops } = side?.passes[0] ?? {};
    expect(overMoonStops).toBeGreaterThan(Math.log2((target?.doseLuxSeconds ?? Number.NaN) / (0.1 * 12)));
    const patchOf = (frame: typeof side) => frame?.passes[0]?.relief.patch ?? { rmsContrast: -1, shadowedShare: -1 };
    expect(patchOf(side).rmsContrast).toBeGreaterThan(1.5 * patchOf(front).rmsContrast);
    expect(patchOf(side).shadowedShare).toBeGreaterThan(patchOf(front).shadowedShare);
    expect(side?.patch?.rmsContrast).toBeLessThan(patchOf(side).rmsContrast);
    expect([side?.keyPassId, side?.fillPassId]).toEqual([side?.passes[0]?.passId, null]);
    expect(side?.keyToFillStops).toBeGreaterThan(0);
    // shadows point away from moon (120) and dome (0): 300 and 180
    const bearing = side?.passes[0]?.shadows.find(({ subjectId }) => subjectId === side?.passes[0]?.rim.subjectId);
    const apart = (a: number, b: number) => Math.abs(((a - b + 540) % 360) - 180);
    const { moonDegrees, glowDegrees } = side?.passes[0]?.agreement ?? { moonDegrees: null, glowDegrees: null };
    expect(moonDegrees).toBeCloseTo(apart(bearing?.bearingDegrees ?? Number.NaN, 300), 9);
    expect(glowDegrees).toBeCloseTo(apart(bearing?.bearingDegrees ?? Number.NaN, 180), 9);
  });

  it('as a table: lines for a pass, its shadow and whoever holds it, and one a frame, none over 120 columns', async () => {
    const { stdout } = await runLampfall('readings', file);
    const rows = stdout.split('\n');
    const passes = rows.filter((row) => row.startsWith('  Key in Painted: '));
    const shadows = rows.filter((row) => row.startsWith('  Shadow of Key in Painted: '));
    const together = rows.filter((row) => row.startsWith('  All light in Painted: '));
    // only behind the stones at three-quarter back does the holder of the lamp stand in the picture; nobody walks anywhere
    const people = rows.filter((row) => row.startsWith('  You with Key in Painted: '));
    expect([passes.length, shadows.length, together.length, people.length]).toEqual([4, 4, 4, 1]);
    expect(people[0]).toMatch(/seen for 8\.0 s, 79 % of the exposure, [\d.]+ % of the picture$/);
    expect(
      rows.filter((row) => /^ {2}Moonlight: 0\.034 lx on level ground; shadows to 300° true/.test(row)).length,
    ).toBe(4);
    expect(passes[0]).toMatch(
      /\+\d\.\d stops over the moon; even to [\d.]+ stops; distance alone [\d.]+; patch contrast [\d.]+, \d+ % in shadow$/,
    );
    expect(shadows[0]).toMatch(/ \d+° off the moon’s; \d+° off the glow’s$/);
    expect(together[0]).toMatch(/Key over moon and sky -?[\d.]+ stops; patch contrast [\d.]+$/);
    expect(Math.max(...[...passes, ...shadows, ...together, ...people].map((row) => row.length))).toBeLessThanOrEqual(
      120,
    );
  });
});
