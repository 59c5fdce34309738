import { skyLightGlsl } from './sky-light.glsl.ts';

/** Values of the define SOURCE_KIND. */
export const sourceKinds = { lamp: 0, moon: 1, sky: 2, mask: 3, dome: 4 } as const;

/** One sample of a source's light on a surface, twin of core/trace/irradiance.ts. Needs tree, surface, emitter and holder. */
export const irradianceGlsl = /* glsl */ `
const int sourceKind = SOURCE_KIND;
const float REACH = 1.0 - 1e-5;
const float FAR_AWAY = 1e5;

// Light from a direction that nothing nearer than the limit may stand in; none where lux is 0.
struct LightSample {
  vec3 direction;
  float limit;
  float lux;
  // of a lamp's spot, as facingSpot gives both
  vec3 spotNormal;
  float crowding;
  bool isAllRound;
};

// At which moments the receiver is out of sight behind whoever holds the lamp, as bits; and the number that draws a moment.
struct Moments {
  int hidden;
  float choice;
};

// Of the lamp as it stands at the moment set.
LightSample lampSpotSample(Receiver receiver, vec2 uv) {
  vec3 spotNormal;
  float crowding;
  vec3 way = facingSpot(receiver.place, uv, spotNormal, crowding) - receiver.place;
  float distanceToLamp = max(length(way), 1e-4);
  vec3 toLamp = way / distanceToLamp;
  float cosReceiver = dot(receiver.normal, toLamp);
  float intensity = cosReceiver > 0.0 ? spotIntensity(-toLamp, spotNormal) : 0.0;
  return LightSample(toLamp, distanceToLamp * REACH, intensity * cosReceiver / (distanceToLamp * distanceToLamp * crowding), spotNormal, crowding, false);
}

// The moment drawn by weight, or -1.
int drawnByWeight(float weights[MOMENTS], float sum, float choice) {
  float goal = choice * sum;
  float below = 0.0;
  int last = -1;
  for (int m = 0; m < momentCount; m++) {
    if (weights[m] <= 0.0) continue;
    below += weights[m];
    last = m;
    if (below > goal) return m;
  }
  return last;
}

int drawnMoment = 0;

// All moments count for the light, the one drawn by its light for the shadow; the lamp stays set as it stands then.
LightSample lampSample(Receiver receiver, vec2 uv, Moments moments) {
#if MOMENTS == 1
  setMoment(0);
  LightSample only = lampSpotSample(receiver, uv);
  only.lux *= moments.hidden == 1 ? 0.0 : throughAir(only.limit / REACH);
  return only;
#else
  float weights[MOMENTS];
  float sum = 0.0;
  for (int m = 0; m < momentCount; m++) {
    setMoment(m);
    weights[m] = ((moments.hidden >> m) & 1) == 1 ? 0.0 : lampSpotSample(receiver, uv).lux;
    sum += weights[m];
  }
  drawnMoment = drawnByWeight(weights, sum, moments.choice);
  if (drawnMoment < 0) return LightSample(vec3(0.0, 1.0, 0.0), 0.0, 0.0, vec3(0.0), 1.0, false);
  setMoment(drawnMoment);
  LightSample light = lampSpotSample(receiver, uv);
  light.lux = sum / float(momentCount) * throughAir(light.limit / REACH);
  return light;
#endif
}

${skyLightGlsl}
LightSample lightSample(Receiver receiver, vec2 uv, Moments moments) {
  if (sourceKind == ${sourceKinds.lamp}) return lampSample(receiver, uv, moments);
  if (sourceKind == ${sourceKinds.moon}) return moonSample(receiver, uv);
  if (sourceKind == ${sourceKinds.dome}) return domeSample(receiver, uv);
  return skySample(receiver, uv);
}

// Whether things keep the light off, or whoever holds the lamp.
bool isKeptOff(Receiver receiver, LightSample light) {
  if (light.lux <= 0.0) return true;
  vec3 from = receiver.shadowOrigin;
  bool byHolder = sourceKind == ${sourceKinds.lamp} && hasHolder && isInTheWay(momentFeet[drawnMoment], from, from + light.direction * light.limit);
  return byHolder || anyHit(from, light.direction, light.limit);
}
`;
