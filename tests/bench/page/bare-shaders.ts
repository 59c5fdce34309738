import { airGlsl } from '../../../app/web/render/shaders/air.glsl.ts';
import { cameraGlsl } from '../../../app/web/render/shaders/camera.glsl.ts';
import { discGlsl } from '../../../app/web/render/shaders/disc.glsl.ts';
import { emitterGlsl } from '../../../app/web/render/shaders/emitter.glsl.ts';
import { holderGlsl } from '../../../app/web/render/shaders/holder.glsl.ts';
import { irradianceGlsl } from '../../../app/web/render/shaders/irradiance.glsl.ts';
import { seenEmitterGlsl } from '../../../app/web/render/shaders/seen-emitter.glsl.ts';
import { sequenceGlsl } from '../../../app/web/render/shaders/sequence.glsl.ts';
import { surfaceGlsl } from '../../../app/web/render/shaders/surface.glsl.ts';
import { treeGlsl } from '../../../app/web/render/shaders/tree.glsl.ts';

const precision =
  'precision highp float;\nprecision highp int;\nprecision highp usampler2D;\nprecision highp sampler2D;';

/** The camera’s rays, made where they are walked; what is met goes out as the bytes of its number + 1. */
export const cameraWalkFragment = `${precision}
${treeGlsl}
${sequenceGlsl}
${discGlsl}
${cameraGlsl}
out vec4 met;
void main() {
  vec3 hit = vec3(0.0);
  Ray ray = cameraRay(uvec2(gl_FragCoord.xy));
  int number = closestHit(ray.origin, ray.direction, hit) + 1;
  met = vec4(number & 255, (number >> 8) & 255, (number >> 16) & 255, number >> 24) / 255.0;
}`;

/** Writes the shadow rays that the renderer traces for a sample; a limit of -1 where it traces none. */
export const shadowRaysFragment = `${precision}
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
uniform usampler2D firstHits;
layout(location = 0) out highp vec4 from;
layout(location = 1) out highp vec4 along;
void main() {
  uvec2 pixel = uvec2(gl_FragCoord.xy);
  uvec4 record = texelFetch(firstHits, ivec2(pixel), 0);
  from = vec4(0.0, 0.0, 0.0, -1.0);
  along = vec4(0.0);
  if (record.x == 0u) return;
  Ray ray = cameraRay(pixel);
  Surface surface = surfaceOf(record, ray.origin, ray.direction);
  vec2 uv = vec2(sampleNumber(sampleIndex, DIM_EMITTERU, pixel), sampleNumber(sampleIndex, DIM_EMITTERV, pixel));
  LightSample light = lightSample(surface.near, uv, Moments(0, sampleNumber(sampleIndex, DIM_MOMENT, pixel)));
  from = vec4(surface.near.shadowOrigin, light.lux > 0.0 ? light.limit : -1.0);
  along = vec4(light.direction, 0.0);
}`;

const fetchedRay = `${precision}
uniform highp sampler2D raysFrom;
uniform highp sampler2D raysAlong;
out vec4 met;
vec4 from;
vec3 along;
void fetchRay() {
  from = texelFetch(raysFrom, ivec2(gl_FragCoord.xy), 0);
  along = texelFetch(raysAlong, ivec2(gl_FragCoord.xy), 0).xyz;
}`;

/** Shadow rays fetched and walked: met or not. */
export const shadowWalkFragment = `${fetchedRay}
${treeGlsl}
void main() {
  fetchRay();
  met = vec4(from.w > 0.0 && anyHit(from.xyz, along, from.w));
}`;

/** The same rays fetched and not walked; what goes out hangs on every number, so that none is left out. */
export const fetchFragment = `${fetchedRay}
void main() {
  fetchRay();
  met = vec4(from.w * dot(from.xyz, along) > 0.5);
}`;

/** Where two records of first hits differ: the renderer’s numbers against the bytes of the bare walk. */
export const differenceFragment = `${precision}
uniform usampler2D firstHits;
uniform highp sampler2D walked;
out vec4 met;
void main() {
  uvec4 bytes = uvec4(round(texelFetch(walked, ivec2(gl_FragCoord.xy), 0) * 255.0));
  uint number = bytes.x | (bytes.y << 8) | (bytes.z << 16) | (bytes.w << 24);
  met = vec4(texelFetch(firstHits, ivec2(gl_FragCoord.xy), 0).x != number);
}`;
