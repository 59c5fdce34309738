import { mostTapsPerSigma, sigmasKept } from '../../../../core/trace/feather.ts';

/** One way of the blur that softens a mask, twin of core/trace/feather.ts. The mask may be coarser than the picture. */
export const featherFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
uniform highp sampler2D mask;
uniform vec2 pictureSize;
// across or down
uniform ivec2 way;
uniform float sigma;
out highp vec4 result;

float maskAt(ivec2 at) {
  ivec2 inside = clamp(at, ivec2(0), ivec2(pictureSize) - 1);
  if (textureSize(mask, 0) == ivec2(pictureSize)) return texelFetch(mask, inside, 0).r;
  return texture(mask, (vec2(inside) + 0.5) / pictureSize).r;
}

void main() {
  int step = max(int(ceil(sigma / ${mostTapsPerSigma.toFixed(1)})), 1);
  int reach = int(ceil(${sigmasKept.toFixed(1)} * sigma / float(step)));
  float sum = 0.0;
  float total = 0.0;
  for (int k = -reach; k <= reach; k++) {
    float off = float(k * step);
    float weight = sigma > 0.0 ? exp(-off * off / (2.0 * sigma * sigma)) : 1.0;
    sum += weight * maskAt(ivec2(gl_FragCoord.xy) + k * step * way);
    total += weight;
  }
  result = vec4(vec3(sum / total), 0.0);
}
`;
