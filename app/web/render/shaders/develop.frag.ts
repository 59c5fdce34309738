/**
 * Linear picture to screen, with the response of core/camera/response.ts and sRGB encoding; picture rows run downward.
 * Compiled for a response that IS_PLAIN, for a picture that IS_SCALED to its place, and for one that MARKS_FULL channels.
 */
export const developFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
precision highp int;
uniform highp sampler2D picture;
uniform vec2 screenSize;
// marks of full channels: device pixels between them
uniform float markPitch;
out highp vec4 colour;

vec3 display(vec3 midGreyRatio) {
  vec3 v = max(midGreyRatio, 0.0) * 0.18;
#if IS_PLAIN
  return min(v, 1.0);
#else
  const float start = 0.6;
  const float range = 0.18 * 7.8 - start;
  const float rise = 1.0 - start;
  vec3 s = min((v - start) / range, 1.0);
  vec3 shoulder = start + s * (range + s * ((3.0 * rise - 2.0 * range) + s * (range - 2.0 * rise)));
  return mix(v, shoulder, greaterThan(v, vec3(start)));
#endif
}

vec3 encode(vec3 linear) {
  vec3 v = clamp(linear, 0.0, 1.0);
  return mix(12.92 * v, 1.055 * pow(max(v, 1e-6), vec3(1.0 / 2.4)) - 0.055, greaterThan(v, vec3(0.0031308)));
}

// Red: strokes rising to the right; green: strokes falling; blue: level ones. All three: a weave.
bool isMarked(int full) {
  vec2 p = gl_FragCoord.xy;
  float stroke = 0.34 * markPitch;
  bool red = (full & 1) != 0 && mod(p.x - p.y, markPitch) < stroke;
  bool green = (full & 2) != 0 && mod(p.x + p.y, markPitch) < stroke;
  bool blue = (full & 4) != 0 && mod(p.y, markPitch) < 0.7 * stroke;
  return red || green || blue;
}

void main() {
  ivec2 size = textureSize(picture, 0);
#if IS_SCALED
  vec2 place = vec2(gl_FragCoord.x / screenSize.x, 1.0 - gl_FragCoord.y / screenSize.y);
  ivec2 at = clamp(ivec2(place * vec2(size)), ivec2(0), size - 1);
  vec3 linear = texture(picture, place).rgb;
#else
  ivec2 at = ivec2(gl_FragCoord.x, size.y - 1 - int(gl_FragCoord.y));
  vec3 linear = texelFetch(picture, at, 0).rgb;
#endif
  colour = vec4(encode(display(linear)), 1.0);
#if MARKS_FULL
  if (isMarked(int(texelFetch(picture, at, 0).a))) colour.rgb = vec3(0.06);
#endif
}
`;
