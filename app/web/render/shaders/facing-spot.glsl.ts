/**
 * Spots of a lamp for light at a place, twin of core/photometry/facing-spot.ts: on globes and tubes they face the place and
 * are drawn as often as they count there. Part of emitter.
 */
export const facingSpotGlsl = /* glsl */ `
const float ON_SKIN = 1.0 + 1e-4;
const float LEAST_SKIN_COSINE = 1e-4;

vec3 roundNormal(vec3 toward, vec3 aside, vec2 skin, vec2 ray) {
  return toward * (skin.y * ray.y + skin.x * ray.x) + aside * (skin.x * ray.y - skin.y * ray.x);
}

#if LAMP_SHAPE == 4
// Some cards work asin out to four places: too coarse for a thin tube far off.
float rimAngle(float sinRim) { return atan(sinRim, sqrt(1.0 - sinRim * sinRim)); }

float tubeRange(float start, float off) {
  float metres = 2.0 * lampHalfSize.x;
  return atan(off * metres, off * off + start * (start + metres));
}

float tubeCrowding(float start, float past, float off, float cosSkin, float rim) {
  float along = off * 2.0 * lampHalfSize.x / (tubeRange(start, off) * (off * off + past * past));
  return along * PI * lampHalfSize.y * max(cosSkin, LEAST_SKIN_COSINE) / (rim * off);
}

// Where on the tube the foot of a place lies, and the way there from the tube, square to it.
vec3 besideTube(vec3 place, out float foot) {
  vec3 offset = place - lampPosition;
  foot = dot(offset, lampFirst);
  return offset - lampFirst * foot;
}
#endif

#if LAMP_SHAPE == 3
float coneShare(float sinRim) { return sinRim * sinRim / (1.0 + sqrt(1.0 - sinRim * sinRim)); }

float globeCrowding(float metres, float cosSkin, float cone) {
  return 2.0 * lampHalfSize.x * lampHalfSize.x * max(cosSkin, LEAST_SKIN_COSINE) / (metres * metres * cone);
}
#endif

vec3 facingSpot(vec3 place, vec2 uv, out vec3 spotNormal, out float crowding) {
  spotNormal = vec3(0.0);
  crowding = 1.0;
  if (LAMP_SHAPE == SHAPE_POINT || uv == vec2(0.5)) return lampPosition;
#if LAMP_SHAPE == 3
  vec3 offset = place - lampPosition;
  float gap = length(offset);
  if (gap > lampHalfSize.x * ON_SKIN) {
    vec3 toward = offset / gap;
    float sinRim = lampHalfSize.x / gap;
    float cone = coneShare(sinRim);
    vec2 ab = discFromSquare(uv);
    float outward = length(ab);
    float below = outward * outward * cone;
    vec2 ray = vec2(outward * sqrt(cone * (2.0 - below)), 1.0 - below);
    float sinSkin = min(ray.x / sinRim, 1.0);
    vec2 skin = vec2(sinSkin, sqrt(1.0 - sinSkin * sinSkin));
    vec3 helper = abs(toward.y) > 0.999 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
    vec3 across = normalize(cross(helper, toward));
    vec3 aside = (across * ab.x + cross(toward, across) * ab.y) / max(outward, 1e-9);
    spotNormal = roundNormal(toward, aside, skin, ray);
    crowding = globeCrowding(gap * ray.y - lampHalfSize.x * skin.y, skin.y, cone);
  } else {
    float y = 1.0 - 2.0 * uv.x;
    float r = sqrt(max(1.0 - y * y, 0.0));
    spotNormal = vec3(r * cos(2.0 * PI * uv.y), y, r * sin(2.0 * PI * uv.y));
  }
  return lampPosition + spotNormal * lampHalfSize.x;
#elif LAMP_SHAPE == 4
  float along = (2.0 * uv.x - 1.0) * lampHalfSize.x;
  float foot;
  vec3 beside = besideTube(place, foot);
  float gap = length(beside);
  if (gap > lampHalfSize.y * ON_SKIN) {
    vec3 toward = beside / gap;
    float sinRim = lampHalfSize.y / gap;
    float rim = rimAngle(sinRim);
    float turn = (2.0 * uv.y - 1.0) * rim;
    vec2 ray = vec2(sin(turn), cos(turn));
    float sinSkin = clamp(ray.x / sinRim, -1.0, 1.0);
    vec2 skin = vec2(sinSkin, sqrt(1.0 - sinSkin * sinSkin));
    float off = gap * ray.y - lampHalfSize.y * skin.y;
    float start = -lampHalfSize.x - foot;
    float angle = uv.x * tubeRange(start, off);
    float s = sin(angle);
    float c = cos(angle);
    float past = clamp(off * (start * c + off * s) / max(off * c - start * s, 1e-12), start, start + 2.0 * lampHalfSize.x);
    vec3 aside = lampAxis * dot(toward, lampSecond) - lampSecond * dot(toward, lampAxis);
    spotNormal = roundNormal(toward, aside, skin, ray);
    crowding = tubeCrowding(start, past, off, skin.y, rim);
    along = past + foot;
  } else spotNormal = lampSecond * cos(2.0 * PI * uv.y) + lampAxis * sin(2.0 * PI * uv.y);
  return lampPosition + lampFirst * along + spotNormal * lampHalfSize.y;
#else
  vec2 offset = LAMP_SHAPE == SHAPE_DISC ? discFromSquare(uv) * lampHalfSize.x : (2.0 * uv - 1.0) * lampHalfSize;
  return lampPosition + lampFirst * offset.x + lampSecond * offset.y;
#endif
}

// Crowding at a spot that faces the place, however it was found.
float crowdingAt(vec3 place, vec3 spot, vec3 spotNormal) {
#if LAMP_SHAPE == 3
  float gap = distance(place, lampPosition);
  vec3 way = place - spot;
  float metres = length(way);
  if (gap > lampHalfSize.x * ON_SKIN)
    return globeCrowding(metres, dot(spotNormal, way) / metres, coneShare(lampHalfSize.x / gap));
#elif LAMP_SHAPE == 4
  float foot;
  float gap = length(besideTube(place, foot));
  if (gap > lampHalfSize.y * ON_SKIN) {
    float past = dot(spot - place, lampFirst);
    vec3 across = place - spot + lampFirst * past;
    float off = length(across);
    return tubeCrowding(-lampHalfSize.x - foot, past, off, dot(spotNormal, across) / off, rimAngle(lampHalfSize.y / gap));
  }
#endif
  return 1.0;
}
`;
