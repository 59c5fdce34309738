/** A layer times the share of each pixel that it counts for. Both may be coarser than the picture. */
export const openFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
uniform highp sampler2D layer;
uniform highp sampler2D share;
uniform vec2 pictureSize;
out highp vec4 result;

vec3 valueAt(sampler2D part) {
  ivec2 size = textureSize(part, 0);
  if (size == ivec2(pictureSize)) return texelFetch(part, ivec2(gl_FragCoord.xy), 0).rgb;
  // read in straight lines between texels, which not every card does with floats
  vec2 at = gl_FragCoord.xy / pictureSize * vec2(size) - 0.5;
  ivec2 low = ivec2(floor(at));
  vec2 along = at - vec2(low);
  ivec2 first = clamp(low, ivec2(0), size - 1);
  ivec2 last = clamp(low + 1, ivec2(0), size - 1);
  vec3 lower = mix(texelFetch(part, first, 0).rgb, texelFetch(part, ivec2(last.x, first.y), 0).rgb, along.x);
  vec3 upper = mix(texelFetch(part, ivec2(first.x, last.y), 0).rgb, texelFetch(part, last, 0).rgb, along.x);
  return mix(lower, upper, along.y);
}

void main() {
  result = vec4(valueAt(layer) * valueAt(share).r, 0.0);
}
`;
