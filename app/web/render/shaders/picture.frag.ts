/** Most layers that one mixing pass reads; more are mixed in several passes. */
export const layersPerPass = 8;

const slots = Array.from({ length: layersPerPass }, (_, i) => i);

/**
 * Adds up to eight weighted layers to a sum. The fourth number of a layer is the share of it before which whoever holds its
 * lamp stands: it counts for what the holder sends of moon and sky, and the fourth number of a sum is what holders take of
 * light behind them, which is what `behind` is summed for. Compiled for the number of ADDENDS, for whether any of them
 * IS_COARSE, coarser than the picture, HAS_COVER, one before whom somebody stands, or all of them lie BEHIND_SOMEBODY; and
 * for whether a sum GOES_ON.
 */
export const mixFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
${slots.map((i) => `uniform highp sampler2D layer${i};`).join('\n')}
uniform vec3 weights[${layersPerPass}];
// of the cover: what the holder sends, and what it takes
uniform vec4 coverWeights[${layersPerPass}];
uniform highp sampler2D sum;
uniform highp sampler2D behind;
uniform vec2 pictureSize;
out highp vec4 result;

// Layers of the picture's own size are read texel by texel: filtering would bleed a millionth of the neighbours in.
vec4 layerAt(sampler2D layer) {
#if IS_COARSE
  bool isFull = textureSize(layer, 0) == ivec2(pictureSize);
  if (!isFull) return texture(layer, gl_FragCoord.xy / pictureSize);
#endif
  return texelFetch(layer, ivec2(gl_FragCoord.xy), 0);
}

vec4 weighted(vec4 layer, vec3 weight, vec4 coverWeight) {
#if HAS_COVER
  return vec4(weight * layer.rgb, 0.0) + coverWeight * layer.a;
#else
  return vec4(weight * layer.rgb, 0.0);
#endif
}

void main() {
  vec4 total = vec4(0.0);
${slots
  .map(
    (i) => `#if ADDENDS > ${i}
  total += weighted(layerAt(layer${i}), weights[${i}], coverWeights[${i}]);
#endif`,
  )
  .join('\n')}
  ivec2 at = ivec2(gl_FragCoord.xy);
#if BEHIND_SOMEBODY
  total.rgb *= max(1.0 - texelFetch(behind, at, 0).a, 0.0);
#endif
#if GOES_ON
  total += texelFetch(sum, at, 0);
#endif
  result = total;
}
`;
