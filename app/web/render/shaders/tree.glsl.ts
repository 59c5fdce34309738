/**
 * Walks of the ray tree, twins of core/geometry/cast-ray.ts. Needs STACK_SIZE, at least the tree's depth.
 * Layout: core/geometry/ray-tree.ts; packing: ../stage-textures.ts.
 */
export const treeGlsl = /* glsl */ `
uniform highp sampler2D nodes;
uniform highp sampler2D corners;

const float EDGE_SLACK = 1e-6;

vec3 inverseDirection(vec3 d) {
  vec3 tiny = mix(vec3(1e-12), vec3(-1e-12), lessThan(d, vec3(0.0)));
  return 1.0 / mix(d, tiny, lessThan(abs(d), vec3(1e-12)));
}

void fetchNode(int node, out vec4 low, out vec4 high) {
  ivec2 at = ivec2((node & 511) << 1, node >> 9);
  low = texelFetch(nodes, at, 0);
  high = texelFetch(nodes, at + ivec2(1, 0), 0);
}

void fetchTriangle(int triangle, out vec4 a, out vec4 b, out vec4 c) {
  ivec2 at = ivec2((triangle & 255) * 3, triangle >> 8);
  a = texelFetch(corners, at, 0);
  b = texelFetch(corners, at + ivec2(1, 0), 0);
  c = texelFetch(corners, at + ivec2(2, 0), 0);
}

// Entry distance into a box, or a negative number when it is missed before the limit.
float enterBox(vec3 low, vec3 high, vec3 origin, vec3 inv, float limit) {
  vec3 a = (low - origin) * inv;
  vec3 b = (high - origin) * inv;
  vec3 near3 = min(a, b);
  vec3 far3 = max(a, b);
  float near = max(max(near3.x, near3.y), max(near3.z, 0.0));
  float far = min(min(far3.x, far3.y), min(far3.z, limit));
  return near <= far * 1.0000004 ? near : -1.0;
}

// Distance, and weights of corners b and c; distance is negative on a miss. Moller and Trumbore 1997.
vec3 meetTriangle(vec3 a, vec3 b, vec3 c, vec3 origin, vec3 direction, float limit) {
  vec3 e = b - a;
  vec3 f = c - a;
  vec3 p = cross(direction, f);
  float det = dot(e, p);
  if (det == 0.0) return vec3(-1.0);
  float inv = 1.0 / det;
  vec3 s = origin - a;
  float u = dot(s, p) * inv;
  vec3 q = cross(s, e);
  float v = dot(direction, q) * inv;
  float t = dot(f, q) * inv;
  bool inside = u >= -EDGE_SLACK && v >= -EDGE_SLACK && u + v <= 1.0 + EDGE_SLACK && t > 0.0 && t < limit;
  return inside ? vec3(t, u, v) : vec3(-1.0);
}

bool anyHit(vec3 origin, vec3 direction, float limit) {
  vec3 inv = inverseDirection(direction);
  int stack[STACK_SIZE];
  int top = 0;
  stack[0] = 0;
  while (top >= 0) {
    int node = stack[top--];
    vec4 low, high;
    fetchNode(node, low, high);
    if (enterBox(low.xyz, high.xyz, origin, inv, limit) < 0.0) continue;
    int link = int(low.w);
    int count = int(high.w);
    if (count == 0) {
      stack[++top] = link;
      stack[++top] = node + 1;
      continue;
    }
    for (int triangle = link; triangle < link + count; triangle++) {
      vec4 a, b, c;
      fetchTriangle(triangle, a, b, c);
      if (meetTriangle(a.xyz, b.xyz, c.xyz, origin, direction, limit).x > 0.0) return true;
    }
  }
  return false;
}

// Triangle index, or -1; distance and corner weights in hit.
int closestHit(vec3 origin, vec3 direction, out vec3 hit) {
  vec3 inv = inverseDirection(direction);
  float bound = 1e20;
  int found = -1;
  int stack[STACK_SIZE];
  int top = 0;
  stack[0] = 0;
  while (top >= 0) {
    int node = stack[top--];
    vec4 low, high;
    fetchNode(node, low, high);
    if (enterBox(low.xyz, high.xyz, origin, inv, bound) < 0.0) continue;
    int link = int(low.w);
    int count = int(high.w);
    if (count == 0) {
      vec4 nearLow, nearHigh, farLow, farHigh;
      fetchNode(node + 1, nearLow, nearHigh);
      fetchNode(link, farLow, farHigh);
      float first = enterBox(nearLow.xyz, nearHigh.xyz, origin, inv, bound);
      float second = enterBox(farLow.xyz, farHigh.xyz, origin, inv, bound);
      bool firstIsNear = second < 0.0 || (first >= 0.0 && first <= second);
      if (first >= 0.0 && second >= 0.0) stack[++top] = firstIsNear ? link : node + 1;
      if (first >= 0.0 || second >= 0.0) stack[++top] = firstIsNear ? node + 1 : link;
      continue;
    }
    for (int triangle = link; triangle < link + count; triangle++) {
      vec4 a, b, c;
      fetchTriangle(triangle, a, b, c);
      vec3 met = meetTriangle(a.xyz, b.xyz, c.xyz, origin, direction, bound);
      if (met.x > 0.0) {
        hit = met;
        bound = met.x;
        found = triangle;
      }
    }
  }
  return found;
}

// What is kept of a hit: triangle + 1 (0 = sky), weights of corners b and c, distance, as bits.
uvec4 recordOf(int triangle, vec3 hit) {
  return triangle < 0 ? uvec4(0u) : uvec4(uint(triangle + 1), floatBitsToUint(hit.y), floatBitsToUint(hit.z), floatBitsToUint(hit.x));
}
`;
