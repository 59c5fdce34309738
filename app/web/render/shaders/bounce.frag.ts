import { lightGlsl } from './light.glsl.ts';

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
