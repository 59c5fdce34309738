import { sourceKinds } from './irradiance.glsl.ts';

/** Whoever holds a lamp as the eye sees them, twin of core/trace/holder-light.ts. Needs tree, seen-emitter, holder, irradiance. */
export const holderLightGlsl = /* glsl */ `
// Where the eye's ray meets the holder at a moment as a place that light falls on; false where it passes by.
bool holderReceiver(Ray ray, float limit, int moment, out Receiver receiver) {
  vec3 normal;
  float t = bodyAlong(momentFeet[moment], ray.origin, ray.direction, normal);
  if (t <= 0.0 || t >= limit) return false;
  vec3 place = ray.origin + ray.direction * t;
  vec3 size = abs(place);
  float offset = 1e-5 * (1.0 + max(size.x, max(size.y, size.z)));
  receiver = Receiver(place, place + normal * offset, normal);
  return true;
}

// Luminance of the holder's clothes by the holder's own lamp; tells at which moments and for what share of them they are seen.
vec3 holderLight(Ray ray, float limit, vec2 uv, inout Moments moments, out float cover) {
  cover = 0.0;
  if (sourceKind != ${sourceKinds.lamp} || !hasHolder) return vec3(0.0);
  float weights[MOMENTS];
  float sum = 0.0;
  Receiver receiver;
  for (int m = 0; m < momentCount; m++) {
    weights[m] = 0.0;
    if (!holderReceiver(ray, limit, m, receiver)) continue;
    moments.hidden |= 1 << m;
    cover += 1.0 / float(momentCount);
    setMoment(m);
    LightSample light = lampSpotSample(receiver, uv);
    weights[m] = light.lux * throughAir(light.limit / REACH + distance(receiver.place, ray.origin));
    sum += weights[m];
  }
  int drawn = drawnByWeight(weights, sum, moments.choice);
  if (drawn < 0) return vec3(0.0);
  setMoment(drawn);
  holderReceiver(ray, limit, drawn, receiver);
  LightSample light = lampSpotSample(receiver, uv);
  if (anyHit(receiver.shadowOrigin, light.direction, light.limit)) return vec3(0.0);
  return vec3(sum / float(momentCount) * holderClothes / PI);
}

// Share of the moments at which the eye's ray meets the holder.
float holderCover(Ray ray, float limit) {
  if (sourceKind != ${sourceKinds.lamp} || !hasHolder) return 0.0;
  float cover = 0.0;
  Receiver receiver;
  for (int m = 0; m < momentCount; m++) if (holderReceiver(ray, limit, m, receiver)) cover += 1.0 / float(momentCount);
  return cover;
}

// The bare lamp over the moments of the sample, where neither things nor its holder stand before it.
float seenPastHolder(Ray ray, float limit, float density, bool isFirst) {
  float sum = 0.0;
  for (int m = 0; m < momentCount; m++) {
    setMoment(m);
    float reach = limit;
    vec3 normal;
    if (isFirst && hasHolder) {
      float t = bodyAlong(momentFeet[m], ray.origin, ray.direction, normal);
      if (t > 0.0) reach = min(reach, t);
    }
    sum += seenEmitter(ray, reach, density);
  }
  return sum / float(momentCount);
}
`;
