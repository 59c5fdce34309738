/** What a ray sees of the bare lamp, twin of core/photometry/seen-emitter.ts. Needs emitter. */
export const seenEmitterGlsl = /* glsl */ `
// Distance to the lamp's surface, or a negative number; its normal on round lamps, else 0.
float meetEmitter(vec3 origin, vec3 direction, out vec3 spotNormal) {
  spotNormal = vec3(0.0);
  vec3 offset = lampPosition - origin;
  if (lampShape == SHAPE_POINT) return -1.0;
  if (lampShape == SHAPE_SPHERE) {
    float along = dot(offset, direction);
    float r2 = lampHalfSize.x * lampHalfSize.x;
    vec3 gap = offset - along * direction;
    if (along <= 0.0 || dot(gap, gap) > r2) return -1.0;
    float t = along - sqrt(r2 - dot(gap, gap));
    spotNormal = (direction * t - offset) / lampHalfSize.x;
    return t;
  }
  if (lampShape == SHAPE_TUBE) {
    // the ray and the offset without their parts along the tube
    vec3 d = direction - lampFirst * dot(direction, lampFirst);
    vec3 o = offset - lampFirst * dot(offset, lampFirst);
    float speed2 = dot(d, d);
    float r2 = lampHalfSize.y * lampHalfSize.y;
    vec3 side = cross(o, d);
    float gap2 = dot(side, side) / max(speed2, 1e-12);
    if (speed2 < 1e-12 || gap2 > r2) return -1.0;
    float t = (dot(o, d) - sqrt((r2 - gap2) * speed2)) / speed2;
    if (t <= 0.0 || abs(t * dot(direction, lampFirst) - dot(offset, lampFirst)) > lampHalfSize.x) return -1.0;
    spotNormal = (d * t - o) / lampHalfSize.y;
    return t;
  }
  float cosEmission = -dot(lampAxis, direction);
  if (cosEmission <= 1e-6) return -1.0;
  float t = -dot(offset, lampAxis) / cosEmission;
  if (t <= 0.0) return -1.0;
  vec3 local = direction * t - offset;
  vec2 ab = vec2(dot(local, lampFirst), dot(local, lampSecond));
  bool isInside = lampShape == SHAPE_DISC ? dot(ab, ab) <= lampHalfSize.x * lampHalfSize.x : all(lessThanEqual(abs(ab), lampHalfSize));
  return isInside ? t : -1.0;
}

float emitterArea() {
  if (lampShape == SHAPE_POINT) return 0.0;
  if (lampShape == SHAPE_DISC) return PI * lampHalfSize.x * lampHalfSize.x;
  if (lampShape == SHAPE_SPHERE) return 4.0 * PI * lampHalfSize.x * lampHalfSize.x;
  return (lampShape == SHAPE_TUBE ? 4.0 * PI : 4.0) * lampHalfSize.x * lampHalfSize.y;
}

float spotAreaAcross(vec3 way, vec3 spotNormal, float crowding) {
  float area = emitterArea() / crowding;
  if (spotNormal == vec3(0.0)) {
    if (lampShape == SHAPE_SPHERE) return area / 4.0;
    if (lampShape == SHAPE_TUBE) return area * length(cross(lampFirst, way)) / PI;
  }
  return area * max(dot(spotNormal == vec3(0.0) ? lampAxis : spotNormal, way), 0.0);
}

// Luminance per lumen of the bare lamp as it stands at the moment set along a ray, nearer than limit; 0 where it is not seen. Rays drawn with a density
// share it with the spots that are drawn on the lamp; one that has only one way (negative) sees all of it.
float seenEmitter(Ray ray, float limit, float density) {
  vec3 spotNormal;
  float t = meetEmitter(ray.origin, ray.direction, spotNormal);
  if (t <= 0.0 || t >= limit) return 0.0;
  float cosEmission = -dot(spotNormal == vec3(0.0) ? lampAxis : spotNormal, ray.direction);
  float areaShown = emitterArea() * max(cosEmission, 1e-6);
  float luminance = spotIntensity(-ray.direction, spotNormal) / areaShown * throughAir(t);
  if (density < 0.0) return luminance;
  float areaAcross = areaShown / max(crowdingAt(ray.origin, ray.origin + ray.direction * t, spotNormal), 1e-6);
  return luminance * density * areaAcross / (density * areaAcross + t * t);
}
`;
