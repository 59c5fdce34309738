import type { Frame } from '../../../../core/setup/schema/setup.ts';

type Purpose = Frame['purpose'];

/** What a new frame starts as. Times, apertures and speeds are common practice, no published source. */
interface FrameKind {
  readonly label: string;
  readonly name: string;
  readonly says: string;
  readonly exposure: Pick<Frame, 'aperture' | 'seconds' | 'iso' | 'delaySeconds'>;
}

/** A land frame gets three stops more than a sky frame: half the light through the lens, sixteen times as long. */
export const frameKinds: Readonly<Record<Purpose, FrameKind>> = {
  sky: {
    label: 'Sky frame',
    name: 'Sky',
    says: 'for the stars, without lamps: f/2.8 · up to 15 s · ISO 6400',
    exposure: { aperture: 2.8, seconds: 15, iso: 6400, delaySeconds: 2 },
  },
  land: {
    label: 'Land frame',
    name: 'Land',
    says: 'for the ground, without lamps: f/4 · 240 s · ISO 6400',
    exposure: { aperture: 4, seconds: 240, iso: 6400, delaySeconds: 2 },
  },
  painted: {
    label: 'Painted frame',
    name: 'Painted',
    says: 'for your lamps: f/8 · 10 s · ISO 400',
    exposure: { aperture: 8, seconds: 10, iso: 400, delaySeconds: 20 },
  },
};

/** In the order in which they are offered. */
export const framePurposes: readonly Purpose[] = ['sky', 'land', 'painted'];
