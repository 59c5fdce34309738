import { saturationRatio } from '../../../../core/camera/exposure.ts';
import { pixelNumberGlsl } from './sequence.glsl.ts';

/** Values of the uniform `mode`. */
export const blendModes = { replace: 0, lighten: 1, add: 2 } as const;

/** Values of the uniform `evenedBy`. */
export const evenings = { nothing: 0, weights: 1, masks: 2 } as const;

/**
 * Turns a frame's sum of light into what its file holds, twin of core/trace/record-pixel.ts, and blends it with the
 * frames before it. A channel that is full in any frame stays marked: the fourth number holds bits of red 1, green 2, blue 4.
 */
export const recordFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
precision highp int;
${pixelNumberGlsl}
uniform highp sampler2D frameSum;
uniform highp sampler2D before;
uniform mat3 whiteBalance;
// tangents of half the field, 0 without fall-off
uniform vec2 fallOffTangents;
// electrons at mid-grey (0 = no noise), read noise, pixels that one picture pixel averages
uniform vec3 noise;
// first of the frame's six dimensions of noise
uniform int noiseDimension;
uniform vec2 pictureSize;
uniform float frameWeight;
// where the frame counts, if not everywhere
uniform bool isMasked;
uniform highp sampler2D mask;
// what the frames share here, as shares.frag.ts gives it; how the blend is evened out by it
uniform highp sampler2D shares;
uniform int evenedBy;
uniform int mode;
out highp vec4 result;

const float FULL = ${saturationRatio.toFixed(4)};

float gaussian(float u1, float u2) {
  return sqrt(-2.0 * log(max(u1, ${2 ** -25}))) * cos(2.0 * 3.14159265358979 * u2);
}

float withNoise(float ratio, int channel) {
  uvec2 pixel = uvec2(gl_FragCoord.xy);
  float held = clamp(ratio, 0.0, FULL);
  float sd = sqrt((held * noise.x + noise.y * noise.y) / noise.z) / noise.x;
  int dim = noiseDimension + 2 * channel;
  return ratio + gaussian(pixelNumber(pixel, dim), pixelNumber(pixel, dim + 1)) * sd;
}

void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec2 place = gl_FragCoord.xy / pictureSize;
  vec2 onSensor = (2.0 * place - 1.0) * fallOffTangents;
  float shade = 1.0 + dot(onSensor, onSensor);
  vec3 sensed = texelFetch(frameSum, at, 0).rgb / (shade * shade);
  if (noise.x > 0.0) sensed = vec3(withNoise(sensed.r, 0), withNoise(sensed.g, 1), withNoise(sensed.b, 2));
  vec3 balanced = whiteBalance * sensed;
  float full = dot(vec3(greaterThanEqual(balanced, vec3(FULL))), vec3(1.0, 2.0, 4.0));
  float share = frameWeight * (isMasked ? texelFetch(mask, at, 0).r : 1.0);
  if (share <= 0.0) full = 0.0;
  vec3 all = evenedBy == ${evenings.nothing} ? vec3(1.0) : texelFetch(shares, at, 0).rgb;
  if (evenedBy == ${evenings.weights}) share /= max(all.r, 1e-9);
  if (evenedBy == ${evenings.masks}) share *= min(all.g, 1.0) / max(all.b, 1e-9);
  vec3 frame = min(balanced, FULL) * share;
  vec4 under = texelFetch(before, at, 0);
  if (mode == ${blendModes.replace}) {
    result = vec4(frame, full);
    return;
  }
  result.rgb = mode == ${blendModes.lighten} ? max(under.rgb, frame) : under.rgb + frame;
  result.a = float(int(full) | int(under.a));
}
`;
