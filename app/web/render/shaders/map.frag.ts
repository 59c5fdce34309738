import { darkestStops } from '../stops-bands.ts';

/** Most bands of a map. */
export const mostBands = 16;

/** Digits 0 to 9, then minus and plus: five rows of three, the first row in the highest bits. */
const glyphs = [
  '111101101101111',
  '010110010010111',
  '111001111100111',
  '111001111001111',
  '101101111001001',
  '111100111001111',
  '111100111101111',
  '111001001001001',
  '111101111101111',
  '111101111001111',
  '000000111000000',
  '000010111010000',
].map((bits) => Number.parseInt(bits, 2));

/**
 * A linear picture as a map of whole stops, or the difference of two: bands of colour, a line between them, and at even
 * places the number of the band there. Twin of the bands: render/stops-bands.ts.
 */
export const mapFragment = /* glsl */ `
precision highp float;
precision highp sampler2D;
precision highp int;
uniform highp sampler2D picture;
uniform highp sampler2D other;
uniform bool isDifference;
uniform vec2 screenSize;
// device pixels of a CSS pixel
uniform float ratio;
uniform vec3 bands[${mostBands}];
uniform int bandCount;
uniform int firstBand;
out highp vec4 colour;

const int GLYPHS[12] = int[12](${glyphs.join(', ')});
const float CELL = 58.0;
const float DARKEST = ${darkestStops.toFixed(1)};
// what is darker than this in both pictures does not differ
const float FLOOR = 0.002;

float luminance(sampler2D map, vec2 place) {
  vec2 step = 0.75 / vec2(textureSize(map, 0));
  vec3 sum = texture(map, place + step * vec2(1.0, 1.0)).rgb + texture(map, place + step * vec2(-1.0, 1.0)).rgb
    + texture(map, place + step * vec2(1.0, -1.0)).rgb + texture(map, place - step).rgb;
  return dot(sum, vec3(0.2126, 0.7152, 0.0722)) / 4.0;
}

float stopsAt(vec2 pixel) {
  vec2 place = pixel / screenSize;
  vec2 turned = clamp(vec2(place.x, 1.0 - place.y), 0.0, 1.0);
  float own = luminance(picture, turned);
  if (!isDifference) return log2(max(own, 1e-6));
  return log2(max(own, FLOOR) / max(luminance(other, turned), FLOOR));
}

int bandAt(vec2 pixel) { return int(floor(stopsAt(pixel) + 0.5)); }

vec3 colourOf(int band) { return bands[clamp(band - firstBand, 0, bandCount - 1)]; }

int digitsOf(int number) { return abs(number) > 9 ? 2 : 1; }

// Sign and digits.
int lettersOf(int number) { return number == 0 ? 1 : digitsOf(number) + 1; }

// Whether a place in a cell, CSS pixels from its middle with y down, lies on the small plate that a number stands on.
bool isPlate(vec2 p, int number) { return abs(p.x) < float(lettersOf(number)) * 4.0 + 2.0 && abs(p.y) < 8.0; }

// Whether it belongs to the sign or a digit of the number.
bool isInk(vec2 p, int number) {
  int digits = digitsOf(number);
  int count = lettersOf(number);
  vec2 at = floor(p / 2.0) + vec2(float(count * 4 - 1) * 0.5, 2.5);
  int slot = int(floor(at.x / 4.0));
  int column = int(floor(at.x)) - slot * 4;
  int row = int(floor(at.y));
  if (slot < 0 || slot >= count || column < 0 || column > 2 || row < 0 || row > 4) return false;
  int glyph = 0;
  if (number != 0 && slot == 0) glyph = number < 0 ? 10 : 11;
  else if (digits == 2 && slot == 1) glyph = abs(number) / 10;
  else glyph = abs(number) - (abs(number) / 10) * 10;
  return (GLYPHS[glyph] >> (14 - row * 3 - column) & 1) == 1;
}

void main() {
  vec2 pixel = gl_FragCoord.xy;
  int band = bandAt(pixel);
  vec3 base = colourOf(band);
  bool isEdge = bandAt(pixel + vec2(1.0, 0.0)) != band || bandAt(pixel + vec2(0.0, 1.0)) != band;
  if (isEdge) base *= dot(base, vec3(0.33)) > 0.35 ? 0.55 : 1.5;
  // a darker difference is hatched, so that its sign shows without colour
  if (isDifference && band < 0 && mod(pixel.x + pixel.y, 6.0 * ratio) < 1.2 * ratio) base *= 0.72;
  vec2 css = vec2(pixel.x, screenSize.y - pixel.y) / ratio;
  vec2 middle = (floor(css / CELL) + 0.5) * CELL;
  vec2 there = vec2(middle.x * ratio, screenSize.y - middle.y * ratio);
  bool fits = middle.x + 16.0 < screenSize.x / ratio && middle.y + 10.0 < screenSize.y / ratio;
  int number = bandAt(there);
  bool tells = fits && (isDifference ? number != 0 : float(number) >= DARKEST);
  if (tells && isPlate(css - middle, number)) {
    vec3 ground = colourOf(number);
    vec3 ink = dot(ground, vec3(0.2126, 0.7152, 0.0722)) > 0.42 ? vec3(0.06) : vec3(0.85, 0.82, 0.77);
    base = isInk(css - middle, number) ? ink : ground;
  }
  colour = vec4(base, 1.0);
}
`;
