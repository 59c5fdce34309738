/** Twin of core/geometry/disc-from-square.ts. */
export const discGlsl = /* glsl */ `
const float PI = 3.14159265358979;

vec2 discFromSquare(vec2 uv) {
  vec2 ab = 2.0 * uv - 1.0;
  if (ab == vec2(0.0)) return vec2(0.0);
  bool wide = abs(ab.x) > abs(ab.y);
  float radius = wide ? ab.x : ab.y;
  float turn = wide ? (PI / 4.0) * (ab.y / ab.x) : PI / 2.0 - (PI / 4.0) * (ab.x / ab.y);
  return radius * vec2(cos(turn), sin(turn));
}
`;
