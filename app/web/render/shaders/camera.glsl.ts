/** Camera rays, twin of core/camera/camera-view.ts. Texel rows run from the top of the picture. */
export const cameraGlsl = /* glsl */ `
uniform vec3 eye;
uniform vec3 viewRight;
uniform vec3 viewUp;
uniform vec3 viewForward;
uniform vec2 viewTangents;
uniform vec2 pictureSize;
uniform int sampleIndex;

vec3 cameraDirection(uvec2 pixel) {
  vec2 jitter = vec2(sampleNumber(sampleIndex, DIM_PIXELX, pixel), sampleNumber(sampleIndex, DIM_PIXELY, pixel));
  vec2 place = (vec2(pixel) + jitter) / pictureSize;
  vec2 offset = vec2(2.0 * place.x - 1.0, 1.0 - 2.0 * place.y) * viewTangents;
  return normalize(viewForward + viewRight * offset.x + viewUp * offset.y);
}
`;
