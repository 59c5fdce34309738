import type { Mesh, RawShaderMaterial, WebGLRenderer } from 'three';
import { describe, expect, it } from 'vitest';
import { floatTarget, recordTarget } from '../../../app/web/render/targets.ts';
import { Tracer } from '../../../app/web/render/tracer.ts';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { discEmitter, stageWith, standing } from '../../core/support/scenes.ts';

const view = cameraView({
  position: [0, 1.6, 6],
  aim: [0, 0, -6],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 24,
});
const disc = discEmitter(0.02);
const kinds = (['disc', 'rectangle', 'sphere', 'tube'] as const).map(
  (shape): Emitter => ({
    ...disc,
    shape,
    halfHeightMetres: 0.02,
  }),
);

/** A card that notes what is drawn with; whatever is let go says so. */
const card = () => {
  const drawn: RawShaderMaterial[] = [];
  const gone = new Set<RawShaderMaterial>();
  const render = ({ material }: Mesh<never, RawShaderMaterial>) => {
    if (!drawn.includes(material)) material.addEventListener('dispose', () => gone.add(material));
    drawn.push(material);
  };
  const gl = {
    autoClear: true,
    getRenderTarget: () => null,
    setRenderTarget: () => undefined,
    getContext: () => ({ getExtension: () => null }),
    render,
  } as unknown as WebGLRenderer;
  return { gl, drawn, gone };
};

describe('Tracer', () => {
  const [hits, after] = [recordTarget(4, 4), floatTarget(card().gl, 4, 4)];
  const taking = (tracer: Tracer) => (emitter: Emitter) =>
    tracer.traceLight({ view, source: standing([2, 1, 0], [0, 0, -6], emitter), bounces: 0 }, 0, hits, null, after, {
      from: 0,
      to: 4,
    });

  it('keeps one program for each kind of lamp, and of too many lets go the one used longest ago', () => {
    const { gl, drawn, gone } = card();
    const tracer = new Tracer(gl, 3);
    tracer.setStage(stageWith());
    const take = taking(tracer);
    const [a, b, c, d] = kinds as [Emitter, Emitter, Emitter, Emitter];
    for (const emitter of [a, b, c, a]) take(emitter);
    expect(new Set(drawn).size).toBe(3);
    expect(drawn[3]).toBe(drawn[0]);
    expect(gone.size).toBe(0);
    // b was used longest ago
    take(d);
    expect([...gone]).toEqual([drawn[1]]);
    take(a);
    expect(drawn[5]).toBe(drawn[0]);
    take(b);
    expect(drawn[6]).not.toBe(drawn[1]);
    expect([...gone]).toEqual([drawn[1], drawn[2]]);
  });

  it('never draws with what it let go, however many kinds take turns', () => {
    const { gl, drawn, gone } = card();
    const tracer = new Tracer(gl, 2);
    tracer.setStage(stageWith());
    const take = taking(tracer);
    for (let turn = 0; turn < 12; turn++) {
      take(kinds[(turn * 3) % 4] as Emitter);
      expect(gone.has(drawn.at(-1) as RawShaderMaterial)).toBe(false);
    }
    expect(new Set(drawn).size - gone.size).toBe(2);
    tracer.dispose();
    expect(gone.size).toBe(new Set(drawn).size);
  });
});
