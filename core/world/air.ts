import type { Setup } from '../setup/schema/setup.ts';

/** Haze near the ground: even up to a height, clear over it. */
export interface Air {
  /** Share of light scattered out of its way per metre. Haze takes none up. */
  readonly scatterPerMetre: number;
  /** How high it reaches over the ground, metres. */
  readonly topMetres: number;
}

/** Height of haze over the ground; our choice: a shallow layer of a still night. */
const topMetres = 100;

/**
 * Haze by how far one sees through it. Visibility is the meteorological optical range, over which a beam loses all but a
 * twentieth: ln 20 / V (WMO-No. 8, part I, chapter 9).
 */
export const airOf = ({ hazeVisibilityKm }: Pick<Setup['place'], 'hazeVisibilityKm'>): Air | null =>
  hazeVisibilityKm === null ? null : { scatterPerMetre: Math.log(20) / (hazeVisibilityKm * 1000), topMetres };

/** Share of light that gets through so much haze straight. Beer and Lambert. */
export const throughAir = (air: Air | null, metres: number): number =>
  air ? Math.exp(-air.scatterPerMetre * metres) : 1;
