/** Most layers that one mixing pass reads; more are mixed in several passes. */
export const layersPerPass = 8;

const slots = Array.from({ length: layersPerPass }, (_, i) => i);

/** Adds up to eight weighted layers to a sum. Layers may be coarser than the picture. */
export const mixFragment = /* glsl */ `
precision highp float;
${slots.map((i) => `uniform highp sampler2D layer${i};`).join('\n')}
uniform vec3 weights[${layersPerPass}];
uniform highp sampler2D sum;
uniform bool startFresh;
uniform vec2 pictureSize;
out highp vec4 result;

// Layers of the picture's own size are read texel by texel: filtering would bleed a millionth of the neighbours in.
vec3 layerAt(sampler2D layer) {
  bool isFull = textureSize(layer, 0) == ivec2(pictureSize);
  return isFull ? texelFetch(layer, ivec2(gl_FragCoord.xy), 0).rgb : texture(layer, gl_FragCoord.xy / pictureSize).rgb;
}

void main() {
  vec3 total = startFresh ? vec3(0.0) : texelFetch(sum, ivec2(gl_FragCoord.xy), 0).rgb;
${slots.map((i) => `  if (weights[${i}] != vec3(0.0)) total += weights[${i}] * layerAt(layer${i});`).join('\n')}
  result = vec4(total, 1.0);
}
`;

/** Values of the uniform `mode`. */
export const blendModes = { replace: 0, lighten: 1, add: 2 } as const;

/** White-balances a frame's sum and blends it with the frames before it. */
export const blendFragment = /* glsl */ `
precision highp float;
uniform highp sampler2D frameSum;
uniform highp sampler2D before;
uniform mat3 whiteBalance;
uniform float frameWeight;
uniform int mode;
out highp vec4 result;

void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec3 frame = whiteBalance * texelFetch(frameSum, at, 0).rgb * frameWeight;
  vec3 under = texelFetch(before, at, 0).rgb;
  result = vec4(mode == ${blendModes.lighten} ? max(under, frame) : mode == ${blendModes.add} ? under + frame : frame, 1.0);
}
`;

/** Linear picture to screen, with the response of core/camera/response.ts and sRGB encoding; picture rows run downward. */
export const developFragment = /* glsl */ `
precision highp float;
uniform highp sampler2D picture;
uniform vec2 screenOrigin;
uniform vec2 screenSize;
out highp vec4 colour;

vec3 display(vec3 midGreyRatio) {
  vec3 v = max(midGreyRatio, 0.0) * 0.18;
  const float start = 0.6;
  const float range = 0.18 * 7.8 - start;
  const float rise = 1.0 - start;
  vec3 s = min((v - start) / range, 1.0);
  vec3 shoulder = start + s * (range + s * ((3.0 * rise - 2.0 * range) + s * (range - 2.0 * rise)));
  return mix(v, shoulder, greaterThan(v, vec3(start)));
}

vec3 encode(vec3 linear) {
  vec3 v = clamp(linear, 0.0, 1.0);
  return mix(12.92 * v, 1.055 * pow(max(v, 1e-6), vec3(1.0 / 2.4)) - 0.055, greaterThan(v, vec3(0.0031308)));
}

void main() {
  vec2 place = (gl_FragCoord.xy - screenOrigin) / screenSize;
  colour = vec4(encode(display(texture(picture, vec2(place.x, 1.0 - place.y)).rgb)), 1.0);
}
`;
