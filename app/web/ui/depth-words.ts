import { metresText } from './words.ts';

interface Depth {
  readonly nearMetres: number;
  readonly farMetres: number | null;
  readonly nearestMetres: number | null;
  readonly farthestMetres: number | null;
}

/** Which end of what the picture shows is not sharp; null when both are. A far limit of null is infinity. */
export const unsharpWords = ({ nearMetres, farMetres, nearestMetres, farthestMetres }: Depth): string | null => {
  const isNearSoft = nearestMetres !== null && nearestMetres < nearMetres;
  const isFarSoft = farMetres !== null && (farthestMetres === null || farthestMetres > farMetres);
  const near = `the nearest thing, ${metresText(nearestMetres)} off`;
  const far = farthestMetres === null ? 'what is at infinity' : `the farthest thing, ${metresText(farthestMetres)} off`;
  if (isNearSoft && isFarSoft) return `Not sharp: ${near}, and ${far}`;
  return isNearSoft || isFarSoft ? `Not sharp: ${isNearSoft ? near : far}` : null;
};
