import { sourceKinds } from './irradiance.glsl.ts';
import { lightGlsl } from './light.glsl.ts';

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
