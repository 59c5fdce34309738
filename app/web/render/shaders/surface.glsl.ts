import { throughSheenSteps } from '../../../../core/photometry/through-sheen.ts';
import { sheetMetres } from '../../../../core/trace/surface-point.ts';

/** Texels a finish: reflectance and transmittance; straight on and roughness; index and mean; what gets through the sheen. */
export const finishTexels = 3 + throughSheenSteps / 4;

/**
 * A hit turned into a place that light falls on, twin of core/trace/surface-point.ts. HAS_SHEEN and HAS_CLOTH (0 or 1) say
 * whether anything of the stage is glossy or lets light through: stages without pay nothing for them.
 */
export const surfaceGlsl = /* glsl */ `
uniform highp sampler2D normals;
uniform highp sampler2D finishes;

struct Receiver {
  vec3 place;
  vec3 shadowOrigin;
  vec3 normal;
};

struct Surface {
  Receiver near;
  vec3 reflectance;
#if HAS_CLOTH == 1
  Receiver far;
  float transmittance;
#endif
#if HAS_SHEEN == 1
  vec3 toEye;
  vec3 face;
  // reflected straight on, and roughness: negative = matt
  vec4 sheen;
  // 0 = metal
  float refractiveIndex;
  // where the share that gets through the sheen lies, and its mean
  ivec2 through;
  float throughMean;
#endif
};

vec3 liftToTangent(vec3 p, vec3 corner, vec3 normal) {
  return p - normal * min(dot(p - corner, normal), 0.0);
}

Surface surfaceOf(uvec4 record, vec3 origin, vec3 direction) {
  int triangle = int(record.x) - 1;
  float u = uintBitsToFloat(record.y);
  float v = uintBitsToFloat(record.z);
  float w = 1.0 - u - v;
  vec4 a, b, c;
  fetchTriangle(triangle, a, b, c);
  ivec2 at = ivec2((triangle & 255) * 3, triangle >> 8);
  vec3 face = normalize(cross(b.xyz - a.xyz, c.xyz - a.xyz));
  float side = dot(face, direction) > 0.0 ? -1.0 : 1.0;
  // the fourth numbers are the tint
  vec4 fa = texelFetch(normals, at, 0);
  vec4 fb = texelFetch(normals, at + ivec2(1, 0), 0);
  vec4 fc = texelFetch(normals, at + ivec2(2, 0), 0);
  vec3 na = side * fa.xyz;
  vec3 nb = side * fb.xyz;
  vec3 nc = side * fc.xyz;
  // along the ray: steadier than the corners of a large triangle
  vec3 position = origin + direction * uintBitsToFloat(record.w);
  vec3 smoothed = liftToTangent(position, a.xyz, na) * w + liftToTangent(position, b.xyz, nb) * u + liftToTangent(position, c.xyz, nc) * v;
  vec3 size = abs(position);
  float offset = 1e-5 * (1.0 + max(size.x, max(size.y, size.z)));
  ivec2 finish = ivec2((int(a.w) & 63) * ${finishTexels}, int(a.w) >> 6);
  vec4 even = texelFetch(finishes, finish, 0);
  Surface surface;
  surface.near.normal = normalize(na * w + nb * u + nc * v);
  surface.near.place = smoothed;
  surface.near.shadowOrigin = smoothed + face * (side * offset);
  surface.reflectance = min(even.rgb * vec3(fa.w, fb.w, fc.w), 1.0);
#if HAS_CLOTH == 1
  vec3 farSmoothed = liftToTangent(position, a.xyz, -na) * w + liftToTangent(position, b.xyz, -nb) * u + liftToTangent(position, c.xyz, -nc) * v;
  surface.far = Receiver(farSmoothed, farSmoothed - face * (side * (offset + ${sheetMetres})), -surface.near.normal);
  surface.transmittance = even.w;
#endif
#if HAS_SHEEN == 1
  surface.toEye = -direction;
  surface.face = face * side;
  surface.sheen = texelFetch(finishes, finish + ivec2(1, 0), 0);
  vec4 clear = texelFetch(finishes, finish + ivec2(2, 0), 0);
  surface.refractiveIndex = clear.x;
  surface.throughMean = clear.y;
  surface.through = finish + ivec2(3, 0);
#endif
  return surface;
}
`;
