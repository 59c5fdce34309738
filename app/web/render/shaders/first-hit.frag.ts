import { cameraGlsl } from './camera.glsl.ts';
import { sequenceGlsl } from './sequence.glsl.ts';
import { treeGlsl } from './tree.glsl.ts';

/** First hits of one sample: triangle + 1 (0 = sky), weights of corners b and c, distance, as bits. */
export const firstHitFragment = /* glsl */ `
precision highp float;
precision highp int;
${treeGlsl}
${sequenceGlsl}
${cameraGlsl}
out highp uvec4 record;

void main() {
  vec3 hit = vec3(0.0);
  int triangle = closestHit(eye, cameraDirection(uvec2(gl_FragCoord.xy)), hit);
  record = triangle < 0 ? uvec4(0u) : uvec4(uint(triangle + 1), floatBitsToUint(hit.y), floatBitsToUint(hit.z), floatBitsToUint(hit.x));
}
`;
