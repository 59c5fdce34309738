/** Linear picture to screen, with the response of core/camera/response.ts and sRGB encoding; picture rows run downward. */
export const developFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
precision highp int;
uniform highp sampler2D picture;
uniform vec2 screenOrigin;
uniform vec2 screenSize;
uniform bool isPlain;
// marks of full channels: device pixels between them, 0 = none
uniform float markPitch;
out highp vec4 colour;

vec3 display(vec3 midGreyRatio) {
  vec3 v = max(midGreyRatio, 0.0) * 0.18;
  if (isPlain) return min(v, 1.0);
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

// Red: strokes rising to the right; green: strokes falling; blue: level ones. All three: a weave.
bool isMarked(int full) {
  vec2 p = gl_FragCoord.xy - screenOrigin;
  float stroke = 0.34 * markPitch;
  bool red = (full & 1) != 0 && mod(p.x - p.y, markPitch) < stroke;
  bool green = (full & 2) != 0 && mod(p.x + p.y, markPitch) < stroke;
  bool blue = (full & 4) != 0 && mod(p.y, markPitch) < 0.7 * stroke;
  return red || green || blue;
}

void main() {
  vec2 place = (gl_FragCoord.xy - screenOrigin) / screenSize;
  vec2 turned = vec2(place.x, 1.0 - place.y);
  colour = vec4(encode(display(texture(picture, turned).rgb)), 1.0);
  if (markPitch <= 0.0) return;
  ivec2 size = textureSize(picture, 0);
  int full = int(texelFetch(picture, clamp(ivec2(turned * vec2(size)), ivec2(0), size - 1), 0).a);
  if (isMarked(full)) colour.rgb = vec3(0.06);
}
`;
