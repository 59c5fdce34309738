import { nearestPass, placesAlong } from '../../../../core/trace/haze-light.ts';
import { forwardness } from '../../../../core/world/air-light.ts';
import { sourceKinds } from './irradiance.glsl.ts';

/** Light of haze, twin of core/trace/haze-light.ts and core/world/air-light.ts. Needs tree, emitter, air, holder, irradiance and camera. */
export const hazeGlsl = /* glsl */ `
const int PLACES = ${placesAlong};

float scatterPhase(float cosine) {
  const float g = ${forwardness.toFixed(4)};
  return (1.0 - g * g) / (4.0 * PI * pow(1.0 + g * g - 2.0 * g * cosine, 1.5));
}

// What one place of a look sends on of a lamp's light, and where it lies.
float glintAt(Ray ray, float farthest, int k, float along, float turn, out vec3 place, out LightSample light) {
  int m = (k + int(turn * float(momentCount))) % momentCount;
  setMoment(m);
  float limit = farthest;
  if (hasHolder) {
    vec3 normal;
    float t = bodyAlong(momentFeet[m], ray.origin, ray.direction, normal);
    if (t > 0.0) limit = min(limit, t);
  }
  vec3 offset = lampPosition - ray.origin;
  float nearest = dot(offset, ray.direction);
  float gap = max(sqrt(max(dot(offset, offset) - nearest * nearest, 0.0)), ${nearestPass.toFixed(4)});
  float from = atan(-nearest / gap);
  float range = atan((limit - nearest) / gap) - from;
  float past = gap * tan(from + range * (float(k) + along) / float(PLACES));
  float t = clamp(nearest + past, 0.0, limit);
  place = ray.origin + ray.direction * t;
  light = lampSpotSample(Receiver(place, place, normalize(lampPosition - place)), vec2(0.5));
  float perMetre = range * (gap * gap + past * past) / gap;
  float distanceToLamp = light.limit / REACH;
  return light.lux * haze.x * scatterPhase(dot(light.direction, ray.direction)) * throughAir(t + distanceToLamp) * perMetre / float(PLACES);
}

float beamInHaze(Ray ray, float farthest, float along, float choice, float turn) {
  float weights[PLACES];
  float sum = 0.0;
  vec3 place;
  LightSample light;
  for (int k = 0; k < PLACES; k++) {
    weights[k] = glintAt(ray, farthest, k, along, turn, place, light);
    sum += weights[k];
  }
  float goal = choice * sum;
  float below = 0.0;
  int drawn = -1;
  for (int k = 0; k < PLACES; k++) {
    if (weights[k] <= 0.0) continue;
    below += weights[k];
    drawn = k;
    if (below > goal) break;
  }
  if (drawn < 0) return 0.0;
  glintAt(ray, farthest, drawn, along, turn, place, light);
  return anyHit(place, light.direction, light.limit) ? 0.0 : sum;
}

float airLight(vec3 direction, float through) {
  if (sourceKind == ${sourceKinds.moon}) return (1.0 - through) * scatterPhase(dot(towardMoon, direction));
  float luxAllRound = sourceKind == ${sourceKinds.sky} ? 2.0 : domeLuxAllRound;
  return (1.0 - through) * luxAllRound / (2.0 * PI);
}

float hazeAlong(Ray ray, float metres, uvec2 pixel) {
  if (sourceKind != ${sourceKinds.lamp}) return airLight(ray.direction, throughAir(metres));
  float along = sampleIndex == 0 ? 0.5 : chanceNumber(sampleIndex, DIM_HAZEALONG, pixel);
  float choice = sampleIndex == 0 ? 0.5 : chanceNumber(sampleIndex, DIM_HAZECHOICE, pixel);
  float turn = sampleIndex == 0 ? 0.5 : chanceNumber(sampleIndex, DIM_HAZETURN, pixel);
  return beamInHaze(ray, metres, along, choice, turn);
}
`;
