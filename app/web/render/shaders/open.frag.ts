/** A layer times the share of each pixel that it counts for. The share may be coarser than the picture. */
export const openFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
uniform highp sampler2D layer;
uniform highp sampler2D share;
uniform vec2 pictureSize;
out highp vec4 result;

void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  bool isFull = textureSize(share, 0) == ivec2(pictureSize);
  float open = isFull ? texelFetch(share, at, 0).r : texture(share, gl_FragCoord.xy / pictureSize).r;
  result = vec4(texelFetch(layer, at, 0).rgb * open, 0.0);
}
`;
