/** Camera rays, twin of core/camera/camera-view.ts. Texel rows run from the top of the picture. Needs sequence and disc. */
export const cameraGlsl = /* glsl */ `
uniform vec3 eye;
uniform vec3 viewRight;
uniform vec3 viewUp;
uniform vec3 viewForward;
uniform vec2 viewTangents;
// radius of the lens opening, 0 = pinhole; distance in focus
uniform vec2 viewLens;
uniform vec2 pictureSize;
uniform int sampleIndex;

struct Ray {
  vec3 origin;
  vec3 direction;
};

Ray cameraRay(uvec2 pixel) {
  vec2 jitter = vec2(sampleNumber(sampleIndex, DIM_PIXELX, pixel), sampleNumber(sampleIndex, DIM_PIXELY, pixel));
  vec2 place = (vec2(pixel) + jitter) / pictureSize;
  vec2 onSensor = vec2(2.0 * place.x - 1.0, 1.0 - 2.0 * place.y) * viewTangents;
  vec3 way = viewForward + viewRight * onSensor.x + viewUp * onSensor.y;
  if (viewLens.x == 0.0) return Ray(eye, normalize(way));
  vec2 lensUv = vec2(scatteredNumber(sampleIndex, DIM_LENSU, pixel), scatteredNumber(sampleIndex, DIM_LENSV, pixel));
  vec2 onLens = discFromSquare(lensUv) * viewLens.x;
  vec3 offset = viewRight * onLens.x + viewUp * onLens.y;
  return Ray(eye + offset, normalize(way * viewLens.y - offset));
}
`;
