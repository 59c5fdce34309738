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

const float ON_SKIN = 1.0 + 1e-4;

#if LAMP_SHAPE == 4
// How the tube lies to a place: its ends along it from the foot of the place, the gap to it, the way there, the angle it takes up.
struct TubeView {
  vec2 ends;
  float gap;
  vec3 toward;
  float range;
  float sinRound;
};

bool viewTube(vec3 place, out TubeView view) {
  vec3 offset = place - lampPosition;
  float foot = dot(offset, lampFirst);
  vec3 across = offset - lampFirst * foot;
  float gap = length(across);
  if (gap <= lampHalfSize.y * ON_SKIN) return false;
  vec2 ends = vec2(-1.0, 1.0) * lampHalfSize.x - foot;
  float range = atan(gap * (ends.y - ends.x), gap * gap + ends.x * ends.y);
  float turned = lampHalfSize.y / gap;
  view = TubeView(ends, gap, across / gap, range, sqrt(1.0 - turned * turned));
  return true;
}

float tubeCrowding(TubeView view, float past, float cosRound) {
  float gap = view.gap;
  return gap * (view.ends.y - view.ends.x) / (view.range * (gap * gap + past * past)) * (PI * cosRound / view.sinRound);
}
#endif

#if LAMP_SHAPE == 3
// The square of the sine that a globe's outline reaches to from a distance.
float shownShare(float distanceToLamp) {
  float share = lampHalfSize.x / distanceToLamp;
  return 1.0 - share * share;
}
#endif

// Twin of core/photometry/facing-spot.ts.
vec3 facingSpot(vec3 place, vec2 uv, out vec3 spotNormal, out float crowding) {
  spotNormal = vec3(0.0);
  crowding = 1.0;
  if (LAMP_SHAPE == SHAPE_POINT || uv == vec2(0.5)) return lampPosition;
#if LAMP_SHAPE == 3
  vec3 offset = place - lampPosition;
  float distanceToLamp = length(offset);
  if (distanceToLamp > lampHalfSize.x * ON_SKIN) {
    vec3 toward = offset / distanceToLamp;
    float shown = shownShare(distanceToLamp);
    vec2 ab = discFromSquare(uv) * sqrt(shown);
    float cosRound = sqrt(max(1.0 - dot(ab, ab), 0.0));
    vec3 helper = abs(toward.y) > 0.999 ? vec3(1.0, 0.0, 0.0) : vec3(0.0, 1.0, 0.0);
    vec3 across = normalize(cross(helper, toward));
    spotNormal = toward * cosRound + across * ab.x + cross(toward, across) * ab.y;
    crowding = 4.0 * cosRound / shown;
  } else {
    float y = 1.0 - 2.0 * uv.x;
    float r = sqrt(max(1.0 - y * y, 0.0));
    spotNormal = vec3(r * cos(2.0 * PI * uv.y), y, r * sin(2.0 * PI * uv.y));
  }
  return lampPosition + spotNormal * lampHalfSize.x;
#elif LAMP_SHAPE == 4
  float along = (2.0 * uv.x - 1.0) * lampHalfSize.x;
  TubeView view;
  if (viewTube(place, view)) {
    float s = sin(uv.x * view.range);
    float c = cos(uv.x * view.range);
    float past = view.gap * (view.ends.x * c + view.gap * s) / (view.gap * c - view.ends.x * s);
    float sideways = (2.0 * uv.y - 1.0) * view.sinRound;
    float cosRound = sqrt(1.0 - sideways * sideways);
    vec3 beside = lampAxis * dot(view.toward, lampSecond) - lampSecond * dot(view.toward, lampAxis);
    spotNormal = view.toward * cosRound + beside * sideways;
    crowding = tubeCrowding(view, past, cosRound);
    along = past - view.ends.x - lampHalfSize.x;
  } else spotNormal = lampSecond * cos(2.0 * PI * uv.y) + lampAxis * sin(2.0 * PI * uv.y);
  return lampPosition + lampFirst * along + spotNormal * lampHalfSize.y;
#else
  vec2 offset = LAMP_SHAPE == SHAPE_DISC ? discFromSquare(uv) * lampHalfSize.x : (2.0 * uv - 1.0) * lampHalfSize;
  return lampPosition + lampFirst * offset.x + lampSecond * offset.y;
#endif
}

// Crowding at a spot that faces the place, however it was found.
float crowdingAt(vec3 place, vec3 spot, vec3 spotNormal) {
#if LAMP_SHAPE == 3
  vec3 offset = place - lampPosition;
  float distanceToLamp = length(offset);
  if (distanceToLamp > lampHalfSize.x * ON_SKIN)
    return 4.0 * max(dot(spotNormal, offset) / distanceToLamp, 0.0) / shownShare(distanceToLamp);
#elif LAMP_SHAPE == 4
  TubeView view;
  if (viewTube(place, view))
    return tubeCrowding(view, dot(spot - place, lampFirst), max(dot(spotNormal, view.toward), 0.0));
#endif
  return 1.0;
}

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
