import { airGlsl } from './air.glsl.ts';
import { cameraGlsl } from './camera.glsl.ts';
import { discGlsl } from './disc.glsl.ts';
import { emitterGlsl } from './emitter.glsl.ts';
import { hazeGlsl } from './haze.glsl.ts';
import { holderGlsl } from './holder.glsl.ts';
import { holderLightGlsl } from './holder-light.glsl.ts';
import { irradianceGlsl } from './irradiance.glsl.ts';
import { litSurfaceGlsl } from './lit-surface.glsl.ts';
import { seenEmitterGlsl } from './seen-emitter.glsl.ts';
import { sequenceGlsl } from './sequence.glsl.ts';
import { sheenGlsl } from './sheen.glsl.ts';
import { surfaceGlsl } from './surface.glsl.ts';
import { treeGlsl } from './tree.glsl.ts';

/** What direct and bounced light share: the scene, a pixel's first hit, and the running mean that a sample is taken into. */
export const lightGlsl = /* glsl */ `
precision highp float;
precision highp int;
precision highp usampler2D;
precision highp sampler2D;
${treeGlsl}
${sequenceGlsl}
${discGlsl}
${cameraGlsl}
${surfaceGlsl}
${emitterGlsl}
${airGlsl}
${seenEmitterGlsl}
${holderGlsl}
${irradianceGlsl}
#if HAS_SHEEN == 1
${sheenGlsl}
#endif
${litSurfaceGlsl}
${holderLightGlsl}
#if HAS_HAZE == 1
${hazeGlsl}
#endif
uniform usampler2D firstHits;
uniform highp sampler2D meanSoFar;
uniform int maskPart;
out highp vec4 mean;

// Light, and the share of it before which somebody stands.
void takeIntoMean(vec4 value) {
  vec4 before = sampleIndex == 0 ? vec4(0.0) : texelFetch(meanSoFar, ivec2(gl_FragCoord.xy), 0);
  mean = before + (value - before) / float(sampleIndex + 1);
}
`;
