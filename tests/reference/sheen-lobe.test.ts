import { describe, it } from 'vitest';
import { seededRandom } from '../../core/geometry/random.ts';
import { dot, type Vec3 } from '../../core/geometry/vec.ts';
import {
  facetDensity,
  facetLobe,
  mirroredBy,
  mirroredDensity,
  mirroredShare,
  seenFacet,
} from '../../core/photometry/facets.ts';
import { clearFresnel } from '../../core/photometry/fresnel.ts';
import { finish } from '../../core/setup/schema/fields.ts';
import { evenShare, fresnel } from '../../core/trace/sheen.ts';
import { type Sheen, stageFinishOf } from '../../core/world/stage-finish.ts';
import { accuracySection } from './support/accuracy.ts';
import { gaussLegendre } from './support/quadrature.ts';

const { check } = accuracySection('Sheen');
const alphas = [0.01, 0.04, 0.09, 0.25, 0.5, 1];
const normal: Vec3 = [0, 1, 0];
const radians = (degrees: number) => (degrees * Math.PI) / 180;
/** A direction by its angle from the normal and its turn about it. */
const leaned = (angle: number, turn: number): Vec3 => [
  Math.sin(angle) * Math.cos(turn),
  Math.cos(angle),
  Math.sin(angle) * Math.sin(turn),
];

const slopes = gaussLegendre(120);
const turns = gaussLegendre(80);
/** Integral over the facets of half a ball; the slope is drawn out so that narrow lobes are met. */
const overFacets = (alpha: number, value: (facet: Vec3) => number): number =>
  slopes.reduce((sum, { at, weight }) => {
    const slope = alpha * Math.tan((Math.PI / 2) * at);
    const angle = Math.atan(slope);
    // d angle / d at
    const stretch = (alpha * (Math.PI / 2) * (1 + (slope / alpha) ** 2)) / (1 + slope ** 2);
    const round = turns.reduce((part, t) => part + t.weight * value(leaned(angle, 2 * Math.PI * t.at)), 0);
    return sum + weight * stretch * Math.sin(angle) * 2 * Math.PI * round;
  }, 0);

describe('facets of a rough sheen', () => {
  it.each(alphas)('alpha %d: seen from straight above they cover the surface once (0.1 %)', (alpha) => {
    check({
      id: `alpha ${alpha}`,
      claim: `area of the facets times their cosine over the surface, alpha ${alpha}`,
      source: 'integral of D(m) (m n) = 1, Walter et al. 2007, eq. 4',
      unit: '',
      expected: 1,
      ours: overFacets(alpha, (facet) => facetDensity(alpha, normal, facet) * dot(facet, normal)),
      tolerance: { relative: 1e-3 },
    });
  });

  it.each(alphas)('alpha %d: 1 / (pi alpha^2) lie level', (alpha) => {
    check({
      id: `alpha ${alpha}`,
      claim: `density of facets that lie level, alpha ${alpha}`,
      source: 'Walter et al. 2007, eq. 33 at angle 0',
      unit: '1/sr',
      expected: 1 / (Math.PI * alpha ** 2),
      ours: facetDensity(alpha, normal, normal),
      tolerance: { relative: 1e-9 },
    });
  });

  it.each(alphas)('alpha %d: those that are seen from aside cover what is seen once (0.5 %)', (alpha) => {
    for (const degrees of [0, 30, 60, 80]) {
      const toEye = leaned(radians(degrees), 0.3);
      check({
        id: `alpha ${alpha}`,
        claim: `area of the facets seen from ${degrees} degrees over the surface seen, alpha ${alpha}`,
        source: 'masking keeps the area that is seen: Heitz 2014, eq. 14',
        unit: '',
        expected: 1,
        // density of facets from that of mirrored directions: Walter et al. 2007, eq. 14
        ours: overFacets(alpha, (facet) => {
          const cos = dot(facet, toEye);
          return cos > 0 ? mirroredDensity(alpha, normal, toEye, mirroredBy(facet, toEye)) * 4 * cos : 0;
        }),
        tolerance: { relative: 5e-3 },
      });
    }
  });
});

/** Of a furnace of luminance 1, what facets that reflect everything but one Fresnel share send to the eye. */
const furnace = (alpha: number, toEye: Vec3, share: (cos: number) => number): number =>
  overFacets(alpha, (facet) => {
    const cos = dot(facet, toEye);
    if (cos <= 0) return 0;
    const toLight = mirroredBy(facet, toEye);
    const cosLight = dot(normal, toLight);
    return cosLight > 0 ? facetLobe(alpha, normal, toEye, toLight) * cosLight * 4 * cos * share(cos) : 0;
  });

describe('the lobe', () => {
  it('is the same with eye and light exchanged (Helmholtz reciprocity; 10,000 pairs, seed 8, rel 1e-9)', () => {
    const random = seededRandom(8);
    const way = () => leaned(Math.acos(1 - random()), 2 * Math.PI * random());
    const sheen = sheenOf(0.5, 1.5);
    const worst = { facets: 0, even: 0 };
    for (let n = 0; n < 10_000; n++) {
      const alpha = alphas[n % alphas.length] as number;
      const [a, b] = [way(), way()];
      const [there, back] = [facetLobe(alpha, normal, a, b), facetLobe(alpha, normal, b, a)];
      const [even, evenBack] = [evenShare(sheen, a[1], b[1]), evenShare(sheen, b[1], a[1])];
      worst.facets = Math.max(worst.facets, Math.abs(there - back) / Math.max(there, 1e-12));
      worst.even = Math.max(worst.even, Math.abs(even - evenBack) / Math.max(even, 1e-12));
    }
    for (const [name, ours] of Object.entries(worst))
      check({
        id: 'reciprocity',
        claim: `largest difference of ${name === 'even' ? 'the even part' : 'the lobe'} with eye and light exchanged`,
        source: 'Helmholtz reciprocity, first principles',
        unit: '',
        expected: 0,
        ours,
        tolerance: { absolute: 1e-9 },
      });
  });

  it.each([0.09, 0.25, 0.5, 1])('alpha %d: drawn directions give the lobe’s integral (1 %)', (alpha) => {
    for (const degrees of [0, 45, 75]) {
      const toEye = leaned(radians(degrees), 1);
      let [sum, side] = [0, 128];
      for (let i = 0; i < side; i++)
        for (let j = 0; j < side; j++) {
          const facet = seenFacet(alpha, normal, toEye, (i + 0.5) / side, (j + 0.5) / side);
          const cosWay = dot(normal, mirroredBy(facet, toEye));
          if (cosWay > 0) sum += mirroredShare(alpha, toEye[1], cosWay) * clearFresnel(1.5, dot(facet, toEye));
        }
      check({
        id: `alpha ${alpha}`,
        claim: `sheen of an even dome seen from ${degrees} degrees, alpha ${alpha}, index 1.5: drawn directions`,
        source: 'Gauss and Legendre’s rule over the lobe of Walter et al. 2007, eq. 20',
        unit: '',
        expected: furnace(alpha, toEye, (cos) => clearFresnel(1.5, cos)),
        ours: sum / side ** 2,
        tolerance: { relative: 0.01 },
      });
    }
  });
});

/** Sheen of a finish whose even part is white. */
const sheenOf = (gloss: number, refractiveIndex: number): Sheen =>
  stageFinishOf(finish.parse({ reflectance: 1, gloss, refractiveIndex })).sheen as Sheen;

describe('a white glossy surface in a white furnace', () => {
  const cosines = gaussLegendre(64);
  const views = [0, 20, 40, 55, 60, 70, 75, 80, 85, 88, 89];

  it.each([1.1, 1.333, 1.5, 2.4, 4])(
    'index %d: returns what it gets, no more and no less, seen from anywhere, at any gloss (1 %)',
    (index) => {
      let [most, least] = [0, 1];
      for (const gloss of [0.02, 0.3, 0.5, 0.7, 0.9, 1]) {
        const sheen = sheenOf(gloss, index);
        for (const degrees of views) {
          const toEye = leaned(radians(degrees), 0);
          const even = cosines.reduce(
            (sum, { at, weight }) => sum + weight * 2 * at * evenShare(sheen, toEye[1], at),
            0,
          );
          const shine =
            sheen.alpha === 0
              ? fresnel(sheen, toEye[1])[0]
              : furnace(sheen.alpha, toEye, (cos) => fresnel(sheen, cos)[0]);
          most = Math.max(most, even + shine);
          least = Math.min(least, even + shine);
        }
      }
      console.log(`index ${index}: ${least.toFixed(4)} to ${most.toFixed(4)}`);
      const row = { id: `n ${index}`, source: 'conservation of energy, first principles', unit: '', expected: 1 };
      const claim = `that a white surface of index ${index} sends of a furnace of luminance 1, all glosses and angles`;
      check({ ...row, claim: `most ${claim}`, ours: most, tolerance: { absolute: 0.01 } });
      check({ ...row, claim: `least ${claim}`, ours: least, tolerance: { absolute: 0.01 } });
    },
  );
});
