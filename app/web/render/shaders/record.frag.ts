import { saturationRatio } from '../../../../core/camera/exposure.ts';
import { pixelNumberGlsl } from './sequence.glsl.ts';

/** Values of MODE. */
export const blendModes = { replace: 0, lighten: 1, add: 2 } as const;

/** Values of EVENED_BY. */
export const evenings = { nothing: 0, weights: 1, masks: 2 } as const;

/**
 * Turns a frame's sum of light into what its file holds, twin of core/trace/record-pixel.ts, and blends it with the
 * frames before it. A channel that is full in any frame stays marked: the fourth number holds bits of red 1, green 2, blue 4.
 * Compiled for a MODE, for what a blend is EVENED_BY, for a frame that IS_MASKED, and for one that HAS_NOISE.
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
// electrons at mid-grey, read noise, pixels that one picture pixel averages
uniform vec3 noise;
// first of the frame's six dimensions of noise
uniform int noiseDimension;
uniform vec2 pictureSize;
uniform float frameWeight;
// where the frame counts
uniform highp sampler2D mask;
// what the frames share here, as shares.frag.ts gives it
uniform highp sampler2D shares;
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
#if HAS_NOISE
  sensed = vec3(withNoise(sensed.r, 0), withNoise(sensed.g, 1), withNoise(sensed.b, 2));
#endif
  vec3 balanced = whiteBalance * sensed;
  float full = dot(vec3(greaterThanEqual(balanced, vec3(FULL))), vec3(1.0, 2.0, 4.0));
  float share = frameWeight;
#if IS_MASKED
  share *= texelFetch(mask, at, 0).r;
#endif
  if (share <= 0.0) full = 0.0;
#if EVENED_BY == ${evenings.weights}
  share /= max(texelFetch(shares, at, 0).r, 1e-9);
#elif EVENED_BY == ${evenings.masks}
  vec3 all = texelFetch(shares, at, 0).rgb;
  share *= min(all.g, 1.0) / max(all.b, 1e-9);
#endif
  vec3 frame = min(balanced, FULL) * share;
#if MODE == ${blendModes.replace}
  result = vec4(frame, full);
#else
  vec4 under = texelFetch(before, at, 0);
  vec3 both = MODE == ${blendModes.lighten} ? max(under.rgb, frame) : under.rgb + frame;
  result = vec4(both, float(int(full) | int(under.a)));
#endif
}
`;
