import { moonRadiusRadians } from '../../../../core/world/world.ts';

/** Values of the uniform `sourceKind`. */
export const sourceKinds = { lamp: 0, moon: 1, sky: 2 } as const;

/** One sample of a source's light on a surface, twin of core/trace/irradiance.ts. Needs tree, surface and emitter. */
export const irradianceGlsl = /* glsl */ `
uniform int sourceKind;
uniform vec3 towardMoon;
uniform vec3 moonFirst;
uniform vec3 moonSecond;

const float REACH = 1.0 - 1e-5;
const float FAR_AWAY = 1e5;

float lampSample(Surface surface, vec2 uv) {
  vec3 spotNormal;
  vec3 way = emitterSpot(uv, spotNormal) - surface.place;
  float distanceToLamp = max(length(way), 1e-4);
  vec3 toLamp = way / distanceToLamp;
  float cosReceiver = dot(surface.normal, toLamp);
  if (cosReceiver <= 0.0) return 0.0;
  float intensity = spotIntensity(-toLamp, spotNormal);
  if (intensity <= 0.0 || anyHit(surface.shadowOrigin, toLamp, distanceToLamp * REACH)) return 0.0;
  return intensity * cosReceiver / (distanceToLamp * distanceToLamp);
}

float moonSample(Surface surface, vec2 uv) {
  vec2 offset = discFromSquare(uv) * ${moonRadiusRadians};
  vec3 toMoon = normalize(towardMoon + moonFirst * offset.x + moonSecond * offset.y);
  float cosReceiver = dot(surface.normal, toMoon);
  return cosReceiver <= 0.0 || anyHit(surface.shadowOrigin, toMoon, FAR_AWAY) ? 0.0 : cosReceiver;
}

// A direction over a surface, more often the nearer to its normal: density cos / pi.
vec3 cosineDirection(vec3 n, vec2 uv) {
  vec3 helper = abs(n.y) > 0.999 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
  vec3 first = normalize(cross(helper, n));
  vec3 second = cross(n, first);
  vec3 around = (first * cos(2.0 * PI * uv.y) + second * sin(2.0 * PI * uv.y)) * sqrt(uv.x);
  return normalize(n * sqrt(max(1.0 - uv.x, 0.0)) + around);
}

float skySample(Surface surface, vec2 uv) {
  vec3 n = surface.normal;
  if (uv == vec2(0.5)) {
    vec3 open = n.y > 0.0 ? n : vec3(0.0, 1.0, 0.0);
    return anyHit(surface.shadowOrigin, open, FAR_AWAY) ? 0.0 : max((1.0 + n.y) / 2.0, 0.0);
  }
  vec3 toSky = cosineDirection(n, uv);
  return toSky.y <= 0.0 || anyHit(surface.shadowOrigin, toSky, FAR_AWAY) ? 0.0 : 1.0;
}

float irradianceSample(Surface surface, vec2 uv) {
  if (sourceKind == ${sourceKinds.lamp}) return lampSample(surface, uv);
  return sourceKind == ${sourceKinds.moon} ? moonSample(surface, uv) : skySample(surface, uv);
}
`;
