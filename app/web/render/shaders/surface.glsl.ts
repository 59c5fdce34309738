/** A hit turned into a place that light falls on, twin of core/trace/surface-point.ts. */
export const surfaceGlsl = /* glsl */ `
uniform highp sampler2D normals;
uniform highp sampler2D reflectances;

struct Surface {
  vec3 normal;
  vec3 place;
  vec3 shadowOrigin;
  vec3 reflectance;
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
  vec3 na = side * texelFetch(normals, at, 0).xyz;
  vec3 nb = side * texelFetch(normals, at + ivec2(1, 0), 0).xyz;
  vec3 nc = side * texelFetch(normals, at + ivec2(2, 0), 0).xyz;
  // along the ray: steadier than the corners of a large triangle
  vec3 position = origin + direction * uintBitsToFloat(record.w);
  vec3 smoothed = liftToTangent(position, a.xyz, na) * w + liftToTangent(position, b.xyz, nb) * u + liftToTangent(position, c.xyz, nc) * v;
  vec3 size = abs(position);
  float offset = 1e-5 * (1.0 + max(size.x, max(size.y, size.z)));
  Surface surface;
  surface.normal = normalize(na * w + nb * u + nc * v);
  surface.place = smoothed;
  surface.shadowOrigin = smoothed + face * (side * offset);
  surface.reflectance = texelFetch(reflectances, ivec2(int(a.w) & 255, int(a.w) >> 8), 0).rgb;
  return surface;
}
`;
