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

// Link and count of the root when the ray enters it, else a count below zero.
ivec2 enterRoot(vec3 origin, vec3 inv, float limit) {
  vec4 low = texelFetch(nodes, ivec2(0, 0), 0);
  vec4 high = texelFetch(nodes, ivec2(1, 0), 0);
  return enterBox(low.xyz, high.xyz, origin, inv, limit) < 0.0 ? ivec2(-1) : ivec2(int(low.w), int(high.w));
}

// Both children of a node: entry distances, negative on a miss; link and count of the one, then of the other.
vec2 enterChildren(int link, vec3 origin, vec3 inv, float limit, out ivec4 links) {
  ivec2 at = ivec2((link & 511) << 1, link >> 9);
  vec4 low = texelFetch(nodes, at, 0);
  vec4 high = texelFetch(nodes, at + ivec2(1, 0), 0);
  vec4 otherLow = texelFetch(nodes, at + ivec2(2, 0), 0);
  vec4 otherHigh = texelFetch(nodes, at + ivec2(3, 0), 0);
  links = ivec4(int(low.w), int(high.w), int(otherLow.w), int(otherHigh.w));
  return vec2(enterBox(low.xyz, high.xyz, origin, inv, limit), enterBox(otherLow.xyz, otherHigh.xyz, origin, inv, limit));
}

// Link and count in one integer: counts stay below 64, links below 2^24.
int packed(ivec2 node) {
  return node.x << 6 | node.y;
}
ivec2 unpacked(int node) {
  return ivec2(node >> 6, node & 63);
}

bool anyHit(vec3 origin, vec3 direction, float limit) {
  vec3 inv = inverseDirection(direction);
  ivec2 node = enterRoot(origin, inv, limit);
  if (node.y < 0) return false;
  int stack[STACK_SIZE];
  int top = 0;
  while (true) {
    if (node.y == 0) {
      ivec4 links;
      vec2 entry = enterChildren(node.x, origin, inv, limit, links);
      bool isFirstNear = entry.y < 0.0 || (entry.x >= 0.0 && entry.x <= entry.y);
      if (entry.x >= 0.0 && entry.y >= 0.0) stack[top++] = packed(isFirstNear ? links.zw : links.xy);
      if (entry.x >= 0.0 || entry.y >= 0.0) {
        node = isFirstNear ? links.xy : links.zw;
        continue;
      }
    }
    for (int triangle = node.x; triangle < node.x + node.y; triangle++) {
      vec4 a, b, c;
      fetchTriangle(triangle, a, b, c);
      if (meetTriangle(a.xyz, b.xyz, c.xyz, origin, direction, limit).x > 0.0) return true;
    }
    if (top == 0) return false;
    node = unpacked(stack[--top]);
  }
  return false;
}

// Triangle index, or -1; distance and corner weights in hit.
int closestHit(vec3 origin, vec3 direction, out vec3 hit) {
  vec3 inv = inverseDirection(direction);
  float bound = 1e20;
  int found = -1;
  ivec2 node = enterRoot(origin, inv, bound);
  if (node.y < 0) return found;
  int stack[STACK_SIZE];
  float stackEntry[STACK_SIZE];
  int top = 0;
  while (true) {
    if (node.y == 0) {
      ivec4 links;
      vec2 entry = enterChildren(node.x, origin, inv, bound, links);
      bool isFirstNear = entry.y < 0.0 || (entry.x >= 0.0 && entry.x <= entry.y);
      if (entry.x >= 0.0 && entry.y >= 0.0) {
        stackEntry[top] = isFirstNear ? entry.y : entry.x;
        stack[top++] = packed(isFirstNear ? links.zw : links.xy);
      }
      if (entry.x >= 0.0 || entry.y >= 0.0) {
        node = isFirstNear ? links.xy : links.zw;
        continue;
      }
    }
    for (int triangle = node.x; triangle < node.x + node.y; triangle++) {
      vec4 a, b, c;
      fetchTriangle(triangle, a, b, c);
      vec3 met = meetTriangle(a.xyz, b.xyz, c.xyz, origin, direction, bound);
      if (met.x > 0.0) {
        hit = met;
        bound = met.x;
        found = triangle;
      }
    }
    // on to what waits, unless something nearer was met meanwhile
    do {
      if (top == 0) return found;
      top--;
    } while (stackEntry[top] > bound);
    node = unpacked(stack[top]);
  }
  return found;
}

// What is kept of a hit: triangle + 1 (0 = sky), weights of corners b and c, distance, as bits.
uvec4 recordOf(int triangle, vec3 hit) {
  return triangle < 0 ? uvec4(0u) : uvec4(uint(triangle + 1), floatBitsToUint(hit.y), floatBitsToUint(hit.z), floatBitsToUint(hit.x));
}
`;
