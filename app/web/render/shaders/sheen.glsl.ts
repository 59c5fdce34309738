import { throughSheenSteps } from '../../../../core/photometry/through-sheen.ts';

/** Sheens, twins of fresnel.ts, facets.ts and through-sheen.ts of core/photometry and of core/trace/sheen.ts. Needs surface, with HAS_SHEEN. */
export const sheenGlsl = /* glsl */ `
// Along the facets of a rough sheen and along a mirror alike.
float clearFresnel(float refractiveIndex, float c) {
  float g = sqrt(refractiveIndex * refractiveIndex - 1.0 + c * c);
  float across = (g - c) / (g + c);
  float along = (c * (g + c) - 1.0) / (c * (g - c) + 1.0);
  return 0.5 * across * across * (1.0 + along * along);
}

vec3 fresnel(Surface surface, float c) {
  if (surface.refractiveIndex > 0.0) return vec3(clearFresnel(surface.refractiveIndex, c));
  return surface.sheen.rgb + (1.0 - surface.sheen.rgb) * pow(max(1.0 - c, 0.0), 5.0);
}

float throughAtRoot(Surface surface, int i) {
  return texelFetch(finishes, surface.through + ivec2(i >> 2, 0), 0)[i & 3];
}

float throughSheen(Surface surface, float c) {
  float at = sqrt(clamp(c, 0.0, 1.0)) * ${throughSheenSteps - 1}.0;
  int low = min(int(at), ${throughSheenSteps - 2});
  return mix(throughAtRoot(surface, low), throughAtRoot(surface, low + 1), at - float(low));
}

float evenShare(Surface surface, float cosEye, float cosLight) {
  if (surface.throughMean == 0.0) return 0.0;
  return throughSheen(surface, cosEye) * throughSheen(surface, cosLight) / surface.throughMean;
}

float evenShareAllRound(Surface surface, float cosEye) {
  return surface.throughMean == 0.0 ? 0.0 : throughSheen(surface, cosEye);
}

float masking(float alpha, float c) { return sqrt(alpha * alpha + (1.0 - alpha * alpha) * c * c); }

float facetDensity(float alpha, vec3 n, vec3 facet) {
  float c = dot(n, facet);
  if (c <= 0.0) return 0.0;
  vec3 across = cross(n, facet);
  float root = alpha * alpha * c * c + dot(across, across);
  return alpha * alpha / (PI * root * root);
}

float seenByBoth(float alpha, float cosEye, float cosLight) {
  return 0.5 / (cosLight * masking(alpha, cosEye) + cosEye * masking(alpha, cosLight));
}

vec3 seenFacet(float alpha, vec3 n, vec3 toEye, vec2 uv) {
  vec3 helper = abs(n.y) > 0.999 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
  vec3 first = normalize(cross(helper, n));
  vec3 second = cross(n, first);
  vec3 eyeway = normalize(vec3(alpha * dot(toEye, first), alpha * dot(toEye, second), dot(toEye, n)));
  float z = (1.0 - uv.y) * (1.0 + eyeway.z) - eyeway.z;
  float r = sqrt(max(1.0 - z * z, 0.0));
  vec2 slope = alpha * (r * vec2(cos(2.0 * PI * uv.x), sin(2.0 * PI * uv.x)) + eyeway.xy);
  return normalize(first * slope.x + second * slope.y + n * max(z + eyeway.z, 1e-6));
}

float mirroredDensity(float alpha, vec3 n, vec3 toEye, vec3 way) {
  return facetDensity(alpha, n, normalize(toEye + way)) / (2.0 * (dot(n, toEye) + masking(alpha, dot(n, toEye))));
}

const float LEAST_COSINE = 1e-3;

vec3 sheenNormal(Surface surface) {
  float c = dot(surface.near.normal, surface.toEye);
  if (c >= LEAST_COSINE) return surface.near.normal;
  return normalize(surface.near.normal + surface.toEye * (LEAST_COSINE - c));
}

vec3 lifted(vec3 direction, vec3 n) {
  float c = dot(direction, n);
  return c >= LEAST_COSINE ? direction : normalize(direction + n * (LEAST_COSINE - c));
}

// Where the eye's ray goes on from a sheen; false where it does not. The density is that of seenEmitter.
bool wayOn(Surface surface, vec2 uv, bool isMiddle, out Ray ray, out vec3 weight, out float density) {
  float alpha = surface.sheen.w;
  vec3 n = sheenNormal(surface);
  float cosEye = dot(n, surface.toEye);
  vec3 facet = alpha == 0.0 || isMiddle ? n : seenFacet(alpha, n, surface.toEye, uv);
  vec3 way = facet * (2.0 * dot(facet, surface.toEye)) - surface.toEye;
  ray = Ray(surface.near.shadowOrigin, lifted(way, surface.face));
  weight = fresnel(surface, min(dot(facet, surface.toEye), 1.0));
  density = -1.0;
  if (alpha == 0.0) return true;
  float cosWay = dot(n, way);
  if (cosWay <= 0.0) return false;
  weight *= 2.0 * cosWay * seenByBoth(alpha, cosEye, cosWay) * (cosEye + masking(alpha, cosEye));
  density = isMiddle ? 0.0 : mirroredDensity(alpha, n, surface.toEye, way);
  return true;
}
`;
