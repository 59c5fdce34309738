import { sourceKinds } from './irradiance.glsl.ts';

/** What a surface sends to the eye, twin of core/trace/lit-surface.ts. Needs tree, surface, sheen, emitter and irradiance. */
export const litSurfaceGlsl = /* glsl */ `
const int SHEEN_NONE = 0;
const int SHEEN_BY_SPOTS = 1;
const int SHEEN_SHARED = 2;

#if HAS_SHEEN == 1
float lobeOfSpot(LightSample light, float lobe, float density, float cosLight, int by) {
  if (sourceKind != ${sourceKinds.lamp}) return lobe;
  float area = spotAreaAcross(-light.direction, light.spotNormal, light.crowding);
  float distanceToLamp = light.limit / REACH;
  float distance2 = distanceToLamp * distanceToLamp;
  if (by == SHEEN_SHARED) return lobe * distance2 / (distance2 + area * density);
  return area > 0.0 ? min(lobe, distance2 / (area * cosLight)) : lobe;
}

vec3 sheenLuminance(Surface surface, vec3 n, LightSample light, int by) {
  float alpha = surface.sheen.w;
  float cosLight = dot(n, light.direction);
  if (by == SHEEN_NONE || light.isAllRound || sourceKind == ${sourceKinds.sky} || sourceKind == ${sourceKinds.dome} || alpha <= 0.0 || cosLight <= 0.0) return vec3(0.0);
  float cosEye = dot(n, surface.toEye);
  vec3 facet = normalize(surface.toEye + light.direction);
  float facets = facetDensity(alpha, n, facet);
  float lobe = facets * seenByBoth(alpha, cosEye, cosLight);
  float density = facets / (2.0 * (cosEye + masking(alpha, cosEye)));
  float lit = light.lux * lobeOfSpot(light, lobe, density, cosLight, by);
  return fresnel(surface, min(dot(facet, surface.toEye), 1.0)) * lit;
}
#endif

vec3 surfaceLuminance(Surface surface, vec2 uv, int by, Moments moments) {
#if HAS_SHEEN == 0 && HAS_CLOTH == 0
  LightSample light = lightSample(surface.near, uv, moments);
  return isKeptOff(surface.near, light) ? vec3(0.0) : surface.reflectance * light.lux / PI;
#else
  vec3 sum = vec3(0.0);
#if HAS_SHEEN == 1
  bool shines = surface.sheen.w >= 0.0;
  vec3 n = sheenNormal(surface);
#endif
  // one loop for both sides, so that the walk for shadows is in the program once
  for (int side = 0; side <= HAS_CLOTH; side++) {
    Receiver receiver = surface.near;
    vec3 share = surface.reflectance;
#if HAS_CLOTH == 1
    if (side == 1) {
      if (surface.transmittance == 0.0) break;
      receiver = surface.far;
      share = vec3(surface.transmittance);
    }
#endif
    LightSample light = lightSample(receiver, uv, moments);
    if (isKeptOff(receiver, light)) continue;
#if HAS_SHEEN == 1
    if (shines) {
      float cosEye = dot(n, surface.toEye);
      share *= light.isAllRound ? evenShareAllRound(surface, cosEye) : evenShare(surface, cosEye, dot(receiver.normal, light.direction));
      if (side == 0) sum += sheenLuminance(surface, n, light, by);
    }
#endif
    sum += share * light.lux / PI;
  }
  return sum;
#endif
}
`;
