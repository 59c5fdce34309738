/** One formula of core that the page, the pictures or the readings use, wrong in one place. */
export interface Mutation {
  readonly formula: string;
  readonly kind: 'sign' | 'power' | 'factor' | 'function';
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** Folders or files of tests, one of which must fail. */
  readonly tests: readonly string[];
}

export const mutations: readonly Mutation[] = [
  {
    formula: 'inverse square of a lamp’s light, E = I cos / d²',
    kind: 'power',
    file: 'core/photometry/open-light.ts',
    from: '(intensity * cosReceiver) / distance ** 2',
    to: '(intensity * cosReceiver) / distance',
    tests: ['tests/reference/photometry'],
  },
  {
    formula: 'cosine of what a lamp lights, E = I cos / d²',
    kind: 'factor',
    file: 'core/photometry/open-light.ts',
    from: '(intensity * cosReceiver) / distance ** 2',
    to: 'intensity / distance ** 2',
    tests: ['tests/reference/photometry', 'tests/core/trace/closed-forms'],
  },
  {
    formula: 'illuminance of one sample of a lamp, for the picture',
    kind: 'factor',
    file: 'core/trace/irradiance.ts',
    from: 'lux: lux * through, toLight: toLamp',
    to: 'lux: 1.1 * lux * through, toLight: toLamp',
    tests: ['tests/reference/area-emitters', 'tests/core/trace'],
  },
  {
    formula: 'exposure of the sensor, H = 0.65 L t / N² (ISO 12232)',
    kind: 'power',
    file: 'core/camera/exposure.ts',
    from: '(lensFactor * luminanceSeconds) / fNumber ** 2',
    to: '(lensFactor * luminanceSeconds) / fNumber',
    tests: ['tests/reference/exposure'],
  },
  {
    formula: 'mid-grey of the sensor, 10 / S (ISO 12232)',
    kind: 'factor',
    file: 'core/camera/exposure.ts',
    from: '10 / iso',
    to: '12.5 / iso',
    tests: ['tests/reference/exposure'],
  },
  {
    formula: 'hyperfocal distance, f² / (N c) + f',
    kind: 'sign',
    file: 'core/camera/depth-of-field.ts',
    from: '(fNumber * cocMm) + focalLengthMm',
    to: '(fNumber * cocMm) - focalLengthMm',
    tests: ['tests/reference/depth-of-field', 'tests/core/camera'],
  },
  {
    formula: 'diameter of the blur circle',
    kind: 'sign',
    file: 'core/camera/depth-of-field.ts',
    from: '(1 - focalLengthMm / focusMm)',
    to: '(1 + focalLengthMm / focusMm)',
    tests: ['tests/reference/blur-circle'],
  },
  {
    formula: 'trail of a star, f ω t cos δ / p',
    kind: 'function',
    file: 'core/camera/star-trail.ts',
    from: 'Math.cos(declinationRadians)',
    to: 'Math.sin(declinationRadians)',
    tests: ['tests/reference/star-trails'],
  },
  {
    formula: 'fall-off of a lens, cos⁴',
    kind: 'power',
    file: 'core/camera/vignetting.ts',
    from: '(1 + h * h + v * v) ** 2',
    to: '(1 + h * h + v * v)',
    tests: ['tests/core/camera', 'tests/reference/exposure'],
  },
  {
    formula: 'shift of a gel in mired',
    kind: 'sign',
    file: 'core/colour/mired.ts',
    from: 'miredFromKelvin(temperatureKelvin) + shiftMired',
    to: 'miredFromKelvin(temperatureKelvin) - shiftMired',
    tests: ['tests/reference/mired-and-gels'],
  },
  {
    formula: 'sRGB decoded (IEC 61966-2-1)',
    kind: 'power',
    file: 'core/colour/srgb.ts',
    from: '((encoded + 0.055) / 1.055) ** 2.4',
    to: '((encoded + 0.055) / 1.055) ** 2.2',
    tests: ['tests/reference/colour', 'tests/core/colour'],
  },
  {
    formula: 'tip of a shadow on the level, H / (H - h) of the way',
    kind: 'sign',
    file: 'core/geometry/shadow.ts',
    from: 'lamp[1] / (lamp[1] - point[1])',
    to: 'lamp[1] / (lamp[1] + point[1])',
    tests: ['tests/reference/shadows', 'tests/core/readings/shadow-reading'],
  },
  {
    formula: 'outline of a shadow on the level',
    kind: 'sign',
    file: 'core/readings/shadow-reading.ts',
    from: 'y / (y - up)',
    to: 'y / (y + up)',
    tests: ['tests/core/readings/shadow-reading'],
  },
  {
    formula: 'what a clear face mirrors (Fresnel)',
    kind: 'factor',
    file: 'core/photometry/fresnel.ts',
    from: '0.5 * across * across',
    to: 'across * across',
    tests: ['tests/reference/fresnel'],
  },
  {
    formula: 'light that a spot of a globe or tube sends, cos / pi (Lambert)',
    kind: 'factor',
    file: 'core/photometry/emitter.ts',
    from: 'Math.max(dot(normal, direction), 0) / Math.PI',
    to: 'Math.max(dot(normal, direction), 0) / 2',
    tests: ['tests/reference/area-emitters', 'tests/reference/extended-sources'],
  },
  {
    formula: 'light of a tube by the angle to it, sin / pi²',
    kind: 'function',
    file: 'core/photometry/emitter.ts',
    from: 'Math.max(1 - dot(first, direction) ** 2, 0)',
    to: 'dot(first, direction) ** 2',
    tests: ['tests/reference/photometry', 'tests/core/photometry'],
  },
  {
    formula: 'air mass (Kasten and Young 1989)',
    kind: 'sign',
    file: 'core/sky/air-mass.ts',
    from: '(sine + 0.50572 *',
    to: '(sine - 0.50572 *',
    tests: ['tests/reference/sky/air', 'tests/core/sky'],
  },
  {
    formula: 'extinction, 10 to the power of -0.4 a magnitude',
    kind: 'factor',
    file: 'core/sky/extinction.ts',
    from: 'const scale = 10 ** (-0.4 * magnitudes)',
    to: 'const scale = 10 ** (-0.5 * magnitudes)',
    tests: ['tests/reference/sky/air', 'tests/core/sky'],
  },
];
