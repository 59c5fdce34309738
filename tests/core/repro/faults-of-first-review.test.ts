import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../core/camera/camera-view.ts';
import { enclosureOf } from '../../../core/cautions/lamp-place.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { lightThroughGels } from '../../../core/colour/gel.ts';
import { exponentFromHalfPeak } from '../../../core/photometry/beam.ts';
import { rimReading } from '../../../core/readings/rim-reading.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import { targetSurface } from '../../../core/readings/target-reading.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { meshOf } from '../support/meshes.ts';
import { discEmitter, onePassSetup, stageWith, standing, subjectOf } from '../support/scenes.ts';

// One case for each fault that the first review of the core found; laws only, no outside values.
const camera = { position: [0, -8, 1.5], aim: [0, 0, 1] };
const codes = (what: Parameters<typeof onePassSetup>[0]) => {
  const setup = onePassSetup(what);
  return reportScheme(setup, setup.schemes[0] as Scheme).cautions.map(({ code }) => code);
};

describe('faults of the first review', () => {
  it('a subject under the ground and a lamp on it are read without a fault', () => {
    const sunk = {
      id: 'sunk',
      name: 'Sunk',
      position: [0, 0, -1],
      parts: [{ kind: 'box', widthMetres: 1, depthMetres: 1, heightMetres: 0.5 }],
    };
    const setup = onePassSetup({
      camera,
      subjects: [sunk],
      pass: { waypoints: [{ position: [3, 0, 0], aim: [0, 0, 0.5] }] },
    });
    const [shadow] = reportScheme(setup, setup.schemes[0] as Scheme).frames[0]?.passes[0]?.shadows ?? [];
    expect(shadow).toMatchObject({ endless: true, tip: null, lengthMetres: null });
  });

  it('under a roof of one plane is not inside it; inside the second of two overlapping boxes is', () => {
    const roof = stageWith(
      subjectOf('roof', [{ kind: 'plane', widthMetres: 20, depthMetres: 20, position: [0, 0, 3] }]),
    );
    expect(enclosureOf(roof, [0, 1.5, 0])).toBeNull();
    const box = (east: number) => ({
      kind: 'box',
      position: [east, 0, 0],
      widthMetres: 2,
      depthMetres: 2,
      heightMetres: 2,
    });
    const pair = stageWith(subjectOf('pair', [box(0), box(1)]));
    expect(enclosureOf(pair, [0.5, 1, 0])?.subject).toBe(0);
    expect(enclosureOf(pair, [1.6, 1, 0])?.subject).toBe(0);
    expect(enclosureOf(pair, [2.1, 1, 0])).toBeNull();
  });

  it('a walk is judged by its worst moment, not by its middle', () => {
    const walk = (position: number[]) => ({
      off: 8,
      waypoints: [
        { time: 0, position, aim: [0, 0, 1] },
        { time: 8, position: [9, 0, 1.5], aim: [0, 0, 1] },
      ],
    });
    const frame = { seconds: 10 };
    expect(codes({ camera, frame, pass: walk([0, -7, 1.4]) })).toContain('near-axis');
    expect(codes({ camera, frame, pass: walk([8, -6, -0.3]) })).toEqual(['lamp-below-ground']);
    expect(codes({ camera, frame, pass: walk([9, -1, 1.5]) })).not.toContain('near-axis');
  });

  it('the far tail of a beam that misses lights no rim', () => {
    const stage = stageWith(subjectOf('ball', [{ kind: 'sphere', radiusMetres: 1, sides: 48 }]));
    const view = cameraView({
      position: [0, 1, 10],
      aim: [0, 1, 0],
      rollRadians: 0,
      sensorWidthMm: 36,
      sensorHeightMm: 24,
      focalLengthMm: 35,
    });
    const beam = { exponent: exponentFromHalfPeak((10 * Math.PI) / 180), cosSpill: 0, cosSpillEven: 0, spillShare: 0 };
    const outline = silhouetteOf(stage, view, 0);
    const aimed = rimReading(stage, outline, standing([6, 1, 0], [0, 1, 0], discEmitter(0, beam)));
    const past = rimReading(stage, outline, standing([6, 1, 0], [6, 1, -9], discEmitter(0, beam)));
    expect(aimed.litShare).toBeGreaterThan(0.4);
    expect(past).toEqual({ litShare: 0, rimToFaceStops: null });
  });

  it('a black gel lets no light through', () => {
    expect(lightThroughGels(5600, [{ shiftMired: 0, transmission: 1, colour: [0, 0, 0] }]).transmission).toBe(0);
  });

  it('a post of four sides has flat faces: no corner normal leans off its face', () => {
    const { positions, normals } = meshOf({ kind: 'cylinder', radiusMetres: 0.5, heightMetres: 2, sides: 4 });
    for (let i = 0; i < positions.length; i += 9) {
      const at = (from: Float64Array, k: number) => [...from.subarray(i + k, i + k + 3)];
      expect(at(normals, 3)).toEqual(at(normals, 0));
      expect(at(normals, 6)).toEqual(at(normals, 0));
    }
  });

  it('a capsule lower than twice its radius is refused by name', () => {
    const low = { id: 'c', name: 'C', parts: [{ kind: 'capsule', radiusMetres: 1, heightMetres: 0.5 }] };
    const attempt = () =>
      onePassSetup({ camera, subjects: [low], pass: { waypoints: [{ position: [3, 0, 1], aim: [0, 0, 1] }] } });
    expect(attempt).toThrow(SetupError);
    expect(attempt).toThrow('subjects[0].parts[0].heightMetres: must be at least twice the radius');
  });

  it('there is ground everywhere a setup may reach: 4.9 km out the camera still sees it', () => {
    const stage = stageWith();
    const surface = targetSurface(stage, [4900, 1.5, 4900], [4900, 0, 4890]);
    expect(surface?.position[1]).toBeCloseTo(0, 3);
    expect(surface?.subject).toBe(-1);
  });
});
