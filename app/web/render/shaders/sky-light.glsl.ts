import { domeSteps } from '../../../../core/sky/dome-cells.ts';
import { forwardness } from '../../../../core/world/air-light.ts';

/** Light of moon and skies on a surface, twin of core/trace/sky-arrival.ts. Part of irradiance. */
export const skyLightGlsl = /* glsl */ `
uniform vec3 towardMoon;
uniform vec3 moonFirst;
uniform vec3 moonSecond;
uniform float moonRadius;
// of a dome: directions of equal light, and in the fourth number the luminance of its cells
uniform highp sampler2D domeTable;
uniform float domeLuxAllRound;
uniform vec3 domeMiddle;
uniform float domeHarmonics[9];

vec3 scatteredDirection(vec2 uv) {
  const float g = ${forwardness.toFixed(4)};
  float root = (1.0 - g * g) / (1.0 - g + 2.0 * g * uv.x);
  float cosine = (1.0 + g * g - root * root) / (2.0 * g);
  vec3 around = (moonFirst * cos(2.0 * PI * uv.y) + moonSecond * sin(2.0 * PI * uv.y)) * sqrt(max(1.0 - cosine * cosine, 0.0));
  return normalize(towardMoon * cosine + around);
}

LightSample moonSample(Receiver receiver, vec2 uv) {
  float straight = throughAir(metresInAir(receiver.place, towardMoon));
  bool isMiddle = uv == vec2(0.5);
  if (isMiddle || uv.x < straight) {
    vec2 offset = discFromSquare(isMiddle ? uv : vec2(uv.x / straight, uv.y)) * moonRadius;
    vec3 toMoon = normalize(towardMoon + moonFirst * offset.x + moonSecond * offset.y);
    float share = isMiddle ? straight + (1.0 - straight) * ${forwardness.toFixed(4)} : 1.0;
    return LightSample(toMoon, FAR_AWAY, max(dot(receiver.normal, toMoon), 0.0) * share, vec3(0.0), 1.0, false);
  }
  vec3 toLight = scatteredDirection(vec2((uv.x - straight) / (1.0 - straight), uv.y));
  float seen = 1.0 - throughAir(metresInAir(receiver.place, toLight));
  float taken = (1.0 - straight) * max(towardMoon.y, 0.0) / max(toLight.y, 1e-6);
  float lux = toLight.y > 0.0 ? min(seen, taken) * max(dot(receiver.normal, toLight), 0.0) / (1.0 - straight) : 0.0;
  return LightSample(toLight, FAR_AWAY, lux, vec3(0.0), 1.0, true);
}

// A direction over a surface, more often the nearer to its normal: density cos / pi.
vec3 cosineDirection(vec3 n, vec2 uv) {
  vec3 helper = abs(n.y) > 0.999 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
  vec3 first = normalize(cross(helper, n));
  vec3 second = cross(n, first);
  vec3 around = (first * cos(2.0 * PI * uv.y) + second * sin(2.0 * PI * uv.y)) * sqrt(uv.x);
  return normalize(n * sqrt(max(1.0 - uv.x, 0.0)) + around);
}

LightSample skySample(Receiver receiver, vec2 uv) {
  vec3 n = receiver.normal;
  if (uv == vec2(0.5)) return LightSample(n.y > 0.0 ? n : vec3(0.0, 1.0, 0.0), FAR_AWAY, max((1.0 + n.y) / 2.0, 0.0), vec3(0.0), 1.0, true);
  vec3 toSky = cosineDirection(n, uv);
  return LightSample(toSky, FAR_AWAY, toSky.y > 0.0 ? 1.0 : 0.0, vec3(0.0), 1.0, false);
}

// As core/sky/dome-harmonics.ts.
float harmonicLux(vec3 n) {
  float h[9] = domeHarmonics;
  return max(0.282095 * h[0] + 0.488603 * (n.y * h[1] + n.z * h[2] + n.x * h[3])
    + 1.092548 * (n.x * n.y * h[4] + n.y * n.z * h[5] + n.x * n.z * h[7])
    + 0.315392 * (3.0 * n.z * n.z - 1.0) * h[6] + 0.546274 * (n.x * n.x - n.y * n.y) * h[8], 0.0);
}

const int DOME_STEPS = ${domeSteps};

LightSample domeSample(Receiver receiver, vec2 uv) {
  vec3 n = receiver.normal;
  if (uv == vec2(0.5)) {
    vec3 middle = n + domeMiddle;
    vec3 toward = dot(middle, middle) > 0.01 && middle.y > 0.0 ? normalize(middle) : domeMiddle;
    return LightSample(toward, FAR_AWAY, harmonicLux(n), vec3(0.0), 1.0, true);
  }
  vec3 toSky = texelFetch(domeTable, ivec2(uv * float(DOME_STEPS)), 0).xyz;
  return LightSample(toSky, FAR_AWAY, domeLuxAllRound * max(dot(n, toSky), 0.0), vec3(0.0), 1.0, false);
}

float domeCell(int column, int row) {
  return texelFetch(domeTable, ivec2((column + DOME_STEPS) % DOME_STEPS, clamp(row, 0, DOME_STEPS - 1)), 0).w;
}

// As core/sky/dome-light.ts.
float domeLuminance(vec3 toward) {
  if (toward.y <= 0.0) return 0.0;
  float turn = atan(toward.x, -toward.z) / (2.0 * PI);
  vec2 at = vec2(turn < 0.0 ? turn + 1.0 : turn, min(toward.y, 1.0)) * float(DOME_STEPS) - 0.5;
  ivec2 low = ivec2(floor(at));
  vec2 share = at - vec2(low);
  float lower = mix(domeCell(low.x, low.y), domeCell(low.x + 1, low.y), share.x);
  float upper = mix(domeCell(low.x, low.y + 1), domeCell(low.x + 1, low.y + 1), share.x);
  return mix(lower, upper, share.y);
}
`;
