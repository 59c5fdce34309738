import { airGlsl } from './air.glsl.ts';
import { cameraGlsl } from './camera.glsl.ts';
import { discGlsl } from './disc.glsl.ts';
import { emitterGlsl } from './emitter.glsl.ts';
import { hazeGlsl } from './haze.glsl.ts';
import { holderGlsl } from './holder.glsl.ts';
import { holderLightGlsl } from './holder-light.glsl.ts';
import { irradianceGlsl, sourceKinds } from './irradiance.glsl.ts';
import { litSurfaceGlsl } from './lit-surface.glsl.ts';
import { seenEmitterGlsl } from './seen-emitter.glsl.ts';
import { sequenceGlsl } from './sequence.glsl.ts';
import { sheenGlsl } from './sheen.glsl.ts';
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

/**
 * One sample of one source over cached first hits: its direct light, and the bare lamp or sky; and the same once more for
 * what shows in a sheen. Twin of core/trace/direct-light.ts.
 */
export const lightFragment = /* glsl */ `
${lightGlsl}

// Whether a first hit lies in the part of the picture that a mask is of; parts as core/trace/mask.ts numbers them.
bool isInPart(uvec4 record) {
  if (record.x == 0u) return maskPart == -2;
  if (maskPart == -4) return true;
  vec4 a, b, c;
  fetchTriangle(int(record.x) - 1, a, b, c);
  return int(b.w) - 1 == maskPart;
}

void main() {
  uvec2 pixel = uvec2(gl_FragCoord.xy);
  uvec4 record = texelFetch(firstHits, ivec2(pixel), 0);
  if (sourceKind == ${sourceKinds.mask}) {
    takeIntoMean(vec4(vec3(isInPart(record)), 0.0));
    return;
  }
  Ray ray = cameraRay(pixel);
  vec2 uv = vec2(sampleNumber(sampleIndex, DIM_EMITTERU, pixel), sampleNumber(sampleIndex, DIM_EMITTERV, pixel));
  vec3 value = vec3(0.0);
  vec3 weight = vec3(1.0);
  float through = 1.0;
  float density = -1.0;
  Moments moments = Moments(0, sampleNumber(sampleIndex, DIM_MOMENT, pixel));
  float cover = 0.0;
  for (int look = 0; look <= HAS_SHEEN; look++) {
    float surfaceDistance = record.x > 0u ? uintBitsToFloat(record.w) : FAR_AWAY;
#if HAS_HAZE == 1
    if (look == 0) {
      float metres = min(metresInAir(ray.origin, ray.direction), surfaceDistance);
      value += hazeAlong(ray, metres, pixel);
      // what lies behind, but for the bare lamp, which may be nearer
      through = throughAir(metres);
      weight *= through;
    }
#endif
    if (look == 0) value += holderLight(ray, surfaceDistance, uv, moments, cover);
    Surface surface;
    if (record.x > 0u) {
      surface = surfaceOf(record, ray.origin, ray.direction);
      int by = look == 0 && sampleIndex > 0 ? SHEEN_SHARED : density < 0.0 ? SHEEN_BY_SPOTS : SHEEN_NONE;
      value += weight * surfaceLuminance(surface, uv, by, moments);
    } else if (sourceKind == ${sourceKinds.sky}) {
      value += weight / PI;
    } else if (sourceKind == ${sourceKinds.dome} && look > 0) {
      value += weight * domeLuminance(ray.direction);
    }
    if (sourceKind == ${sourceKinds.lamp}) value += (look == 0 ? vec3(1.0) : weight) * seenPastHolder(ray, surfaceDistance, density, look == 0);
#if HAS_SHEEN == 1
    if (look == 1 || record.x == 0u || surface.sheen.w < 0.0) break;
    vec2 way = vec2(scatteredNumber(sampleIndex, DIM_BOUNCEU, pixel), scatteredNumber(sampleIndex, DIM_BOUNCEV, pixel));
    if (!wayOn(surface, way, sampleIndex == 0, ray, weight, density)) break;
    // the sheen shows past haze, for as long as nobody stands before it
    weight *= through * (1.0 - cover);
    moments.hidden = 0;
    vec3 hit = vec3(0.0);
    int triangle = closestHit(ray.origin, ray.direction, hit);
    record = recordOf(triangle, hit);
#endif
  }
  takeIntoMean(vec4(value, cover));
}
`;

/** One sample of what one source sends by way of other surfaces, BOUNCES of them at most. Twin of core/trace/bounce.ts. */
export const bounceFragment = /* glsl */ `
${lightGlsl}

float most(vec3 v) { return max(v.x, max(v.y, v.z)); }

#if HAS_SHEEN == 1
// How often the eye's ray goes on from a sheen, rather than that the surface's even part counts.
float sheenOdds(Surface surface) {
  float cosEye = dot(sheenNormal(surface), surface.toEye);
  float mirrored = most(fresnel(surface, cosEye));
  float sent = most(surface.reflectance);
#if HAS_CLOTH == 1
  sent += surface.transmittance;
#endif
  return mirrored / max(mirrored + evenShareAllRound(surface, cosEye) * sent, 1e-9);
}
#endif

// Drawn by the cosine on the side looked at, or on the far side of cloth; the weight is what is met there counts for.
Ray evenWay(Surface surface, vec2 way, float side, out vec3 weight) {
  Receiver from = surface.near;
  weight = surface.reflectance;
#if HAS_CLOTH == 1
  if (surface.transmittance > 0.0) {
    float through = surface.transmittance / max(surface.transmittance + most(surface.reflectance), 1e-9);
    bool isThrough = side < through;
    weight = isThrough ? vec3(surface.transmittance / through) : surface.reflectance / (1.0 - through);
    if (isThrough) from = surface.far;
  }
#endif
  vec3 direction = cosineDirection(from.normal, way);
#if HAS_SHEEN == 1
  if (surface.sheen.w >= 0.0)
    weight *= evenShare(surface, dot(sheenNormal(surface), surface.toEye), dot(from.normal, direction));
#endif
  return Ray(from.shadowOrigin, direction);
}

void main() {
  uvec2 pixel = uvec2(gl_FragCoord.xy);
  uvec4 record = texelFetch(firstHits, ivec2(pixel), 0);
  vec3 value = vec3(0.0);
  Ray ray = cameraRay(pixel);
  // who stands before a surface stands before its bounced light too
  float seenDistance = record.x > 0u ? uintBitsToFloat(record.w) : FAR_AWAY;
  vec3 reflected = vec3(1.0 - holderCover(ray, seenDistance)) * throughAir(min(metresInAir(ray.origin, ray.direction), seenDistance));
  int bounce = 0;
  for (int leg = 0; leg <= BOUNCES + HAS_SHEEN; leg++) {
    if (record.x == 0u) break;
    Surface surface = surfaceOf(record, ray.origin, ray.direction);
    vec3 weight;
    bool isShown = false;
#if HAS_SHEEN == 1
    if (leg == 0 && surface.sheen.w >= 0.0) {
      float odds = sheenOdds(surface);
      isShown = chanceNumber(sampleIndex, DIM_SHEENORNOT, pixel) < odds;
      if (isShown) {
        float density;
        vec2 way = vec2(chanceNumber(sampleIndex, DIM_SHEENU, pixel), chanceNumber(sampleIndex, DIM_SHEENV, pixel));
        if (!wayOn(surface, way, false, ray, weight, density)) break;
        reflected /= odds;
      } else reflected /= 1.0 - odds;
    }
#endif
    if (!isShown) {
      if (bounce > 0) {
        int dim = bounce == 1 ? DIM_BOUNCEDEMITTERU : DIM_SECONDBOUNCEDEMITTERU;
        vec2 uv = vec2(chanceNumber(sampleIndex, dim, pixel), chanceNumber(sampleIndex, dim + 1, pixel));
        Moments moments = Moments(0, chanceNumber(sampleIndex, bounce == 1 ? DIM_BOUNCEDMOMENT : DIM_SECONDBOUNCEDMOMENT, pixel));
        value += reflected * surfaceLuminance(surface, uv, SHEEN_NONE, moments);
      }
      if (bounce == BOUNCES) break;
      vec2 way = bounce == 0
        ? vec2(scatteredNumber(sampleIndex, DIM_BOUNCEU, pixel), scatteredNumber(sampleIndex, DIM_BOUNCEV, pixel))
        : vec2(chanceNumber(sampleIndex, DIM_SECONDBOUNCEU, pixel), chanceNumber(sampleIndex, DIM_SECONDBOUNCEV, pixel));
      ray = evenWay(surface, way, chanceNumber(sampleIndex, bounce == 0 ? DIM_SIDE : DIM_SECONDSIDE, pixel), weight);
      bounce++;
    }
    reflected *= weight;
    vec3 hit = vec3(0.0);
    int triangle = closestHit(ray.origin, ray.direction, hit);
    record = recordOf(triangle, hit);
  }
  takeIntoMean(vec4(value, 0.0));
}
`;
