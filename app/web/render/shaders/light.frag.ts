import { cameraGlsl } from './camera.glsl.ts';
import { discGlsl } from './disc.glsl.ts';
import { emitterGlsl } from './emitter.glsl.ts';
import { irradianceGlsl, sourceKinds } from './irradiance.glsl.ts';
import { seenEmitterGlsl } from './seen-emitter.glsl.ts';
import { sequenceGlsl } from './sequence.glsl.ts';
import { surfaceGlsl } from './surface.glsl.ts';
import { treeGlsl } from './tree.glsl.ts';

/** What direct and bounced light share: the scene, a pixel's first hit, and the running mean that a sample is taken into. */
const lightGlsl = /* glsl */ `
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
${irradianceGlsl}
uniform usampler2D firstHits;
uniform highp sampler2D meanSoFar;
out highp vec4 mean;

void takeIntoMean(vec3 value) {
  vec3 before = sampleIndex == 0 ? vec3(0.0) : texelFetch(meanSoFar, ivec2(gl_FragCoord.xy), 0).rgb;
  mean = vec4(before + (value - before) / float(sampleIndex + 1), 1.0);
}
`;

/** One sample of one source over cached first hits: its direct light, and the bare lamp or sky. Twin of core/trace/layer.ts. */
export const lightFragment = /* glsl */ `
${lightGlsl}
${seenEmitterGlsl}

void main() {
  uvec2 pixel = uvec2(gl_FragCoord.xy);
  uvec4 record = texelFetch(firstHits, ivec2(pixel), 0);
  Ray ray = cameraRay(pixel);
  vec2 uv = vec2(sampleNumber(sampleIndex, DIM_EMITTERU, pixel), sampleNumber(sampleIndex, DIM_EMITTERV, pixel));
  vec3 value = vec3(0.0);
  float surfaceDistance = 1e20;
  if (record.x > 0u) {
    surfaceDistance = uintBitsToFloat(record.w);
    Surface surface = surfaceOf(record, ray.origin, ray.direction);
    value = surface.reflectance * irradianceSample(surface, uv) / PI;
  } else if (sourceKind == ${sourceKinds.sky}) {
    value = vec3(1.0 / PI);
  }
  if (sourceKind == ${sourceKinds.lamp}) value += seenEmitter(ray, surfaceDistance);
  takeIntoMean(value);
}
`;

/** One sample of what one source sends by way of other surfaces, BOUNCES of them at most. Twin of core/trace/bounce.ts. */
export const bounceFragment = /* glsl */ `
${lightGlsl}

void main() {
  uvec2 pixel = uvec2(gl_FragCoord.xy);
  uvec4 record = texelFetch(firstHits, ivec2(pixel), 0);
  vec3 value = vec3(0.0);
  Ray ray = cameraRay(pixel);
  vec3 reflected = vec3(1.0);
  for (int bounce = 0; bounce <= BOUNCES; bounce++) {
    if (record.x == 0u) break;
    Surface surface = surfaceOf(record, ray.origin, ray.direction);
    reflected *= surface.reflectance;
    if (bounce > 0) {
      int dim = bounce == 1 ? DIM_BOUNCEDEMITTERU : DIM_SECONDBOUNCEDEMITTERU;
      vec2 uv = vec2(chanceNumber(sampleIndex, dim, pixel), chanceNumber(sampleIndex, dim + 1, pixel));
      value += reflected * irradianceSample(surface, uv) / PI;
    }
    if (bounce == BOUNCES) break;
    vec2 way = bounce == 0
      ? vec2(scatteredNumber(sampleIndex, DIM_BOUNCEU, pixel), scatteredNumber(sampleIndex, DIM_BOUNCEV, pixel))
      : vec2(chanceNumber(sampleIndex, DIM_SECONDBOUNCEU, pixel), chanceNumber(sampleIndex, DIM_SECONDBOUNCEV, pixel));
    ray = Ray(surface.shadowOrigin, cosineDirection(surface.normal, way));
    vec3 hit = vec3(0.0);
    int triangle = closestHit(ray.origin, ray.direction, hit);
    record = recordOf(triangle, hit);
  }
  takeIntoMean(value);
}
`;
