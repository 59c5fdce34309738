import type { Part } from '../../../../core/setup/schema/setup.ts';
import { worded } from '../../ui/lengths.ts';
import type { Point } from './points.ts';

/** How far points reach along one of their two numbers. */
const reach = (points: readonly Point[], axis: 0 | 1): number =>
  Math.max(...points.map((p) => p[axis])) - Math.min(...points.map((p) => p[axis]));

/** East to west, north to south, and height of a part before it is turned, metres; null for a scan, which says its own. */
const sizeOfPart = (part: Part): readonly number[] | null => {
  switch (part.kind) {
    case 'box':
    case 'wedge':
      return [part.widthMetres, part.depthMetres, part.heightMetres];
    case 'cylinder': {
      const width = 2 * Math.max(part.radiusMetres, part.topRadiusMetres ?? 0);
      return [width, width, part.heightMetres];
    }
    case 'cone':
    case 'capsule':
      return [2 * part.radiusMetres, 2 * part.radiusMetres, part.heightMetres];
    case 'sphere': {
      const { radiusMetres: radius, radiusNorthMetres, heightMetres } = part;
      return [2 * radius, 2 * (radiusNorthMetres ?? radius), heightMetres ?? 2 * radius];
    }
    case 'plane':
      return [part.widthMetres, part.depthMetres];
    case 'ring':
      return [2 * (part.radiusMetres + part.tubeRadiusMetres)];
    case 'turned': {
      const width = 2 * Math.max(...part.profile.map(([away]) => away));
      return [width, width, reach(part.profile, 1)];
    }
    case 'prism':
      return [reach(part.outline, 0), reach(part.outline, 1), part.heightMetres];
    case 'loft': {
      const points = part.sections.flatMap(({ outline }) => outline);
      const norths = part.sections.map(({ northMetres }) => northMetres);
      return [reach(points, 0), Math.max(...norths) - Math.min(...norths), reach(points, 1)];
    }
    case 'wall':
      return [part.widthMetres, part.thicknessMetres, part.heightMetres + part.gableMetres];
    case 'scan':
      return null;
  }
};

/** "5 × 0.5 × 2.4 m". */
export const sizeText = (part: Part): string => {
  const size = sizeOfPart(part);
  return size ? worded(`${size.map((metres) => Number(metres.toFixed(2))).join(' × ')} m`) : '';
};
