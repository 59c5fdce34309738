/** Most layers that one mixing pass reads; more are mixed in several passes. */
export const layersPerPass = 8;

const slots = Array.from({ length: layersPerPass }, (_, i) => i);

/** Adds up to eight weighted layers to a sum. Layers may be coarser than the picture. */
export const mixFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
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
