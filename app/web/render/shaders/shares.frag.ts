/**
 * What the frames of a blend share at each pixel, frame by frame: weights times masks together, masks together, and the
 * greatest mask. Twin of `sharesAt` in core/trace/blend.ts.
 */
export const sharesFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
uniform highp sampler2D before;
uniform bool startFresh;
uniform float frameWeight;
uniform bool isMasked;
uniform highp sampler2D mask;
out highp vec4 result;

void main() {
  ivec2 at = ivec2(gl_FragCoord.xy);
  vec3 sum = startFresh ? vec3(0.0) : texelFetch(before, at, 0).rgb;
  float covered = isMasked ? texelFetch(mask, at, 0).r : 1.0;
  result = vec4(sum.r + frameWeight * covered, sum.g + covered, max(sum.b, covered), 0.0);
}
`;
