import { facingSpotGlsl } from './facing-spot.glsl.ts';

/**
 * Spots on lamps and what they send, twin of core/photometry/emitter.ts and beam.ts. Needs disc. LAMP_SHAPE, MOMENTS and
 * HAS_MEASURED say what lamp it is: each has a program of its own, without what it is not.
 */
export const emitterGlsl = /* glsl */ `
const int SHAPE_POINT = 0;
const int SHAPE_DISC = 1;
const int SHAPE_RECTANGLE = 2;
const int SHAPE_SPHERE = 3;
const int SHAPE_TUBE = 4;

// how the lamp stands at the moments of this sample
const int momentCount = MOMENTS;
uniform vec3 momentPosition[MOMENTS];
uniform vec3 momentAxis[MOMENTS];
uniform vec3 momentFirst[MOMENTS];
// and at the moment in question
vec3 lampPosition;
vec3 lampAxis;
vec3 lampFirst;
vec3 lampSecond;
const int lampShape = LAMP_SHAPE;
// half width or radius, half height; of a tube half length and radius
uniform vec2 lampHalfSize;
// exponent of the hot spot, its peak per lumen; then cosine where the spill ends, cosine up to which it is even, its level
uniform vec2 lampLobe;
uniform vec3 lampSpill;
// share that cloth spreads, cosine where the snoot ends
uniform vec2 lampFront;
// a measured beam: row 0 holds the vertical angles, column 0 the horizontal ones, the rest candela per lumen
const bool isMeasured = HAS_MEASURED == 1;
uniform float measuredTurn;
uniform highp sampler2D measuredTable;

void setMoment(int moment) {
  lampPosition = momentPosition[moment];
  lampAxis = momentAxis[moment];
  lampFirst = momentFirst[moment];
  lampSecond = cross(lampAxis, lampFirst);
}

float tableAt(int column, int row) { return texelFetch(measuredTable, ivec2(column, row), 0).r; }

// Last place in 1..count - 1 whose angle is at most the one asked for.
int placeInTable(float angle, int count, bool isRow) {
  int low = 1;
  int high = count - 1;
  while (low < high) {
    int middle = (low + high + 1) / 2;
    if ((isRow ? tableAt(middle, 0) : tableAt(0, middle)) <= angle) low = middle; else high = middle - 1;
  }
  return low;
}

// Twin of core/photometry/distribution.ts.
float measuredPerLumen(float vertical, float horizontal) {
  ivec2 count = textureSize(measuredTable, 0) - 1;
  if (vertical < tableAt(1, 0) || vertical > tableAt(count.x, 0)) return 0.0;
  float turned = mod(horizontal, 2.0 * PI);
  int column = placeInTable(vertical, count.x, true);
  int row = placeInTable(turned, count.y, false);
  float left = tableAt(column, 0);
  float low = tableAt(0, row);
  float across = clamp((vertical - left) / (tableAt(column + 1, 0) - left), 0.0, 1.0);
  float along = clamp((turned - low) / (tableAt(0, row + 1) - low), 0.0, 1.0);
  return mix(
    mix(tableAt(column, row), tableAt(column + 1, row), across),
    mix(tableAt(column, row + 1), tableAt(column + 1, row + 1), across),
    along
  );
}

float beamIntensity(vec3 direction) {
  float cosAngle = dot(lampAxis, direction);
  if (isMeasured) {
    vec2 across = vec2(dot(lampFirst, direction), dot(lampSecond, direction));
    float horizontal = across == vec2(0.0) ? 0.0 : atan(-across.y, across.x);
    return measuredPerLumen(atan(length(across), cosAngle), horizontal - measuredTurn);
  }
  float lobe = cosAngle > 0.0 ? lampLobe.y * pow(cosAngle, lampLobe.x) : 0.0;
  if (lampSpill.z == 0.0 || cosAngle < lampSpill.x) return lobe;
  float edge = cosAngle >= lampSpill.y ? 1.0 : (cosAngle - lampSpill.x) / (lampSpill.y - lampSpill.x);
  return lobe + lampSpill.z * edge;
}

${facingSpotGlsl}
float spotIntensity(vec3 direction, vec3 spotNormal) {
  float along = dot(lampAxis, direction);
  if (along < lampFront.y) return 0.0;
  if (spotNormal != vec3(0.0)) return max(dot(spotNormal, direction), 0.0) / PI;
  if (lampShape == SHAPE_SPHERE) return 1.0 / (4.0 * PI);
  if (lampShape == SHAPE_TUBE) {
    float level = dot(lampFirst, direction);
    return sqrt(max(1.0 - level * level, 0.0)) / (PI * PI);
  }
  float bare = beamIntensity(direction);
  return bare + lampFront.x * (max(along, 0.0) / PI - bare);
}
`;
