import { cameraGlsl } from './camera.glsl.ts';
import { discGlsl } from './disc.glsl.ts';
import { sequenceGlsl } from './sequence.glsl.ts';
import { treeGlsl } from './tree.glsl.ts';

/** First hits of one sample: triangle + 1 (0 = sky), weights of corners b and c, distance, as bits. */
export const firstHitFragment = /* glsl */ `
precision highp float;
precision highp int;
${treeGlsl}
${sequenceGlsl}
${discGlsl}
${cameraGlsl}
out highp uvec4 record;

void main() {
  vec3 hit = vec3(0.0);
  Ray ray = cameraRay(uvec2(gl_FragCoord.xy));
  int triangle = closestHit(ray.origin, ray.direction, hit);
  record = recordOf(triangle, hit);
}
`;
