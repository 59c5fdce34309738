/** Spots on lamps and what they send, twin of core/photometry/emitter.ts and beam.ts. */
export const emitterGlsl = /* glsl */ `
const int SHAPE_DISC = 0;
const int SHAPE_RECTANGLE = 1;
const int SHAPE_SPHERE = 2;
const int SHAPE_TUBE = 3;
const float PI = 3.14159265358979;

uniform int lampShape;
uniform vec3 lampPosition;
uniform vec3 lampAxis;
uniform vec3 lampFirst;
uniform vec3 lampSecond;
uniform vec2 lampHalfSize;
// exponent of the hot spot, its peak per lumen; then cosine where the spill ends, cosine up to which it is even, its level
uniform vec2 lampLobe;
uniform vec3 lampSpill;

vec2 discFromSquare(vec2 uv) {
  vec2 ab = 2.0 * uv - 1.0;
  if (ab == vec2(0.0)) return vec2(0.0);
  bool wide = abs(ab.x) > abs(ab.y);
  float radius = wide ? ab.x : ab.y;
  float turn = wide ? (PI / 4.0) * (ab.y / ab.x) : PI / 2.0 - (PI / 4.0) * (ab.x / ab.y);
  return radius * vec2(cos(turn), sin(turn));
}

float intensityPerLumen(float cosAngle) {
  if (cosAngle <= 0.0) return 0.0;
  float lobe = lampLobe.y * pow(cosAngle, lampLobe.x);
  if (lampSpill.z == 0.0 || cosAngle < lampSpill.x) return lobe;
  float edge = cosAngle >= lampSpill.y ? 1.0 : (cosAngle - lampSpill.x) / (lampSpill.y - lampSpill.x);
  return lobe + lampSpill.z * edge;
}

vec3 emitterSpot(vec2 uv, out vec3 spotNormal) {
  spotNormal = vec3(0.0);
  if (lampShape == SHAPE_SPHERE) {
    if (uv == vec2(0.5)) return lampPosition;
    float y = 1.0 - 2.0 * uv.x;
    float r = sqrt(max(1.0 - y * y, 0.0));
    spotNormal = vec3(r * cos(2.0 * PI * uv.y), y, r * sin(2.0 * PI * uv.y));
    return lampPosition + spotNormal * lampHalfSize.x;
  }
  vec2 offset = lampShape == SHAPE_DISC ? discFromSquare(uv) * lampHalfSize.x : (2.0 * uv - 1.0) * lampHalfSize;
  if (lampShape == SHAPE_TUBE) offset.y = 0.0;
  return lampPosition + lampFirst * offset.x + lampSecond * offset.y;
}

float spotIntensity(vec3 direction, vec3 spotNormal) {
  if (lampShape == SHAPE_SPHERE)
    return spotNormal == vec3(0.0) ? 1.0 / (4.0 * PI) : max(dot(spotNormal, direction), 0.0) / PI;
  if (lampShape == SHAPE_TUBE) {
    float along = dot(lampFirst, direction);
    return sqrt(max(1.0 - along * along, 0.0)) / (PI * PI);
  }
  return intensityPerLumen(dot(lampAxis, direction));
}

// Luminance per lumen of the bare lamp along a ray, nearer than limit; 0 where it is not seen.
float seenEmitter(vec3 origin, vec3 direction, float limit) {
  vec3 offset = lampPosition - origin;
  if (lampShape == SHAPE_TUBE) return 0.0;
  if (lampShape == SHAPE_SPHERE) {
    float along = dot(offset, direction);
    float r2 = lampHalfSize.x * lampHalfSize.x;
    vec3 gap = offset - along * direction;
    if (along <= 0.0 || dot(gap, gap) > r2) return 0.0;
    return along - sqrt(r2 - dot(gap, gap)) < limit ? 1.0 / (4.0 * PI * PI * r2) : 0.0;
  }
  float cosEmission = -dot(lampAxis, direction);
  if (cosEmission <= 1e-6) return 0.0;
  float t = -dot(offset, lampAxis) / cosEmission;
  if (t <= 0.0 || t >= limit) return 0.0;
  vec3 local = direction * t - offset;
  vec2 ab = vec2(dot(local, lampFirst), dot(local, lampSecond));
  bool disc = lampShape == SHAPE_DISC;
  bool inside = disc ? dot(ab, ab) <= lampHalfSize.x * lampHalfSize.x : all(lessThanEqual(abs(ab), lampHalfSize));
  float area = disc ? PI * lampHalfSize.x * lampHalfSize.x : 4.0 * lampHalfSize.x * lampHalfSize.y;
  return inside ? intensityPerLumen(cosEmission) / (area * cosEmission) : 0.0;
}
`;
