import { body } from '../../../../core/walk/body.ts';

const { radiusMetres: radius, heightMetres: height } = body;

/** The body of whoever holds a lamp, twin of core/walk/body.ts. Needs emitter. */
export const holderGlsl = /* glsl */ `
// where the feet are at the moments of this sample
uniform vec3 momentFeet[MOMENTS];
const bool hasHolder = HAS_HOLDER == 1;
// reflectance of the clothes
uniform float holderClothes;

const float BODY_RADIUS = ${radius.toFixed(4)};
const float BODY_HEIGHT = ${height.toFixed(4)};

float alongBall(vec3 offset, vec3 direction) {
  float along = dot(offset, direction);
  vec3 gap = offset - along * direction;
  float room = BODY_RADIUS * BODY_RADIUS - dot(gap, gap);
  return room > 0.0 ? along - sqrt(room) : -1.0;
}

// Distance to a body along a ray from outside, with the normal there; negative when the ray passes by.
float bodyAlong(vec3 feet, vec3 origin, vec3 direction, out vec3 normal) {
  normal = vec3(0.0);
  float low = feet.y + BODY_RADIUS;
  float high = feet.y + BODY_HEIGHT - BODY_RADIUS;
  vec2 from = origin.xz - feet.xz;
  float a = dot(direction.xz, direction.xz);
  float b = dot(from, direction.xz);
  float over = origin.y - clamp(origin.y, low, high);
  if (dot(from, from) + over * over <= BODY_RADIUS * BODY_RADIUS) return -1.0;
  float aside = from.x * direction.z - from.y * direction.x;
  float root = a * BODY_RADIUS * BODY_RADIUS - aside * aside;
  if (root < 0.0) return -1.0;
  bool isUpright = a <= 1e-12;
  float t = isUpright ? -1.0 : (-b - sqrt(root)) / a;
  float y = origin.y + t * direction.y;
  if (isUpright || y < low || y > high) {
    float end = (isUpright ? origin.y : y) < low ? low : high;
    t = alongBall(vec3(-from.x, end - origin.y, -from.y), direction);
  }
  if (t <= 0.0) return -1.0;
  vec3 at = origin + direction * t;
  normal = normalize(at - vec3(feet.x, clamp(at.y, low, high), feet.z));
  return t;
}

// Whether a body keeps a straight piece from being free.
bool isInTheWay(vec3 feet, vec3 from, vec3 to) {
  vec3 u = to - from;
  vec3 r = from - (feet + vec3(0.0, BODY_RADIUS, 0.0));
  float tall = BODY_HEIGHT - 2.0 * BODY_RADIUS;
  float a = dot(u, u);
  float e = tall * tall;
  float f = tall * r.y;
  float c = dot(u, r);
  float b = tall * u.y;
  float parts = a * e - b * b;
  float s = parts > 1e-12 ? clamp((b * f - c * e) / parts, 0.0, 1.0) : 0.0;
  float t = (b * s + f) / e;
  if (t < 0.0 || t > 1.0) {
    t = clamp(t, 0.0, 1.0);
    s = clamp((b * t - c) / a, 0.0, 1.0);
  }
  vec3 d = r + u * s - vec3(0.0, tall * t, 0.0);
  return dot(d, d) < BODY_RADIUS * BODY_RADIUS;
}
`;
