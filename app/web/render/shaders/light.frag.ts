import { moonRadiusRadians } from '../../../../core/world/world.ts';
import { cameraGlsl } from './camera.glsl.ts';
import { emitterGlsl } from './emitter.glsl.ts';
import { sequenceGlsl } from './sequence.glsl.ts';
import { surfaceGlsl } from './surface.glsl.ts';
import { treeGlsl } from './tree.glsl.ts';

/** Values of the uniform `sourceKind`. */
export const sourceKinds = { lamp: 0, moon: 1, sky: 2 } as const;

/** One sample of one source over cached first hits, taken into the running mean. Twin of core/trace/irradiance.ts. */
export const lightFragment = /* glsl */ `
precision highp float;
precision highp int;
precision highp usampler2D;
${treeGlsl}
${sequenceGlsl}
${cameraGlsl}
${surfaceGlsl}
${emitterGlsl}
uniform usampler2D firstHits;
uniform highp sampler2D meanSoFar;
uniform int sourceKind;
uniform vec3 towardMoon;
uniform vec3 moonFirst;
uniform vec3 moonSecond;
out highp vec4 mean;

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

float skySample(Surface surface, vec2 uv) {
  vec3 n = surface.normal;
  if (uv == vec2(0.5)) {
    vec3 open = n.y > 0.0 ? n : vec3(0.0, 1.0, 0.0);
    return anyHit(surface.shadowOrigin, open, FAR_AWAY) ? 0.0 : max((1.0 + n.y) / 2.0, 0.0);
  }
  vec3 helper = abs(n.y) > 0.999 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
  vec3 first = normalize(cross(helper, n));
  vec3 second = cross(n, first);
  vec3 around = (first * cos(2.0 * PI * uv.y) + second * sin(2.0 * PI * uv.y)) * sqrt(uv.x);
  vec3 toSky = normalize(n * sqrt(max(1.0 - uv.x, 0.0)) + around);
  return toSky.y <= 0.0 || anyHit(surface.shadowOrigin, toSky, FAR_AWAY) ? 0.0 : 1.0;
}

void main() {
  ivec2 texel = ivec2(gl_FragCoord.xy);
  uvec2 pixel = uvec2(texel);
  uvec4 record = texelFetch(firstHits, texel, 0);
  vec3 direction = cameraDirection(pixel);
  vec2 uv = vec2(sampleNumber(sampleIndex, DIM_EMITTERU, pixel), sampleNumber(sampleIndex, DIM_EMITTERV, pixel));
  vec3 value = vec3(0.0);
  float surfaceDistance = 1e20;
  if (record.x > 0u) {
    surfaceDistance = uintBitsToFloat(record.w);
    Surface surface = surfaceOf(record, direction);
    float lux = sourceKind == ${sourceKinds.lamp} ? lampSample(surface, uv) : sourceKind == ${sourceKinds.moon} ? moonSample(surface, uv) : skySample(surface, uv);
    value = surface.reflectance * lux / PI;
  } else if (sourceKind == ${sourceKinds.sky}) {
    value = vec3(1.0 / PI);
  }
  if (sourceKind == ${sourceKinds.lamp}) value += seenEmitter(eye, direction, surfaceDistance);
  vec3 before = sampleIndex == 0 ? vec3(0.0) : texelFetch(meanSoFar, texel, 0).rgb;
  mean = vec4(before + (value - before) / float(sampleIndex + 1), 1.0);
}
`;
