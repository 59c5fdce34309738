import type { Beam, Lamp, MeasuredBeam, Setup } from '../../../../core/setup/schema/setup.ts';
import { fluxOf } from '../../../../core/world/lamp-light.ts';
import { freshId, replaceById } from './within.ts';

type Output = Lamp['output'];

const changeLamp = (setup: Setup, lampId: string, change: (lamp: Lamp) => Lamp): Setup => ({
  ...setup,
  lamps: replaceById(setup.lamps, lampId, change),
});

export const setLampName = (setup: Setup, lampId: string, name: string): Setup =>
  changeLamp(setup, lampId, (lamp) => ({ ...lamp, name }));

export const setLampOutput = (setup: Setup, lampId: string, output: Output): Setup =>
  changeLamp(setup, lampId, (lamp) => ({ ...lamp, output }));

export const setLampKelvin = (setup: Setup, lampId: string, temperatureKelvin: number): Setup =>
  changeLamp(setup, lampId, (lamp) => ({ ...lamp, temperatureKelvin }));

export const setLowestLevel = (setup: Setup, lampId: string, lowestLevelPercent: number): Setup =>
  changeLamp(setup, lampId, (lamp) => ({ ...lamp, lowestLevelPercent }));

/** Whether a kind of lamp can have a beam of that shape. */
const takesBeam = (lamp: Lamp, { shape }: Beam): boolean => {
  if (lamp.kind === 'point') return shape === 'even' || shape === 'measured';
  return (lamp.kind === 'torch' || lamp.kind === 'panel') && shape !== 'even';
};

/**
 * Gives a lamp another beam, where it can have it. A lamp whose output was that of its measured beam keeps its lumens.
 */
export const setLampBeam = (setup: Setup, lampId: string, beam: Beam): Setup =>
  changeLamp(setup, lampId, (lamp) => {
    if (!takesBeam(lamp, beam)) return lamp;
    const keeps = lamp.output.from !== 'measured' || beam.shape === 'measured';
    const lumens = Number(fluxOf(lamp, setup.measuredBeams).toPrecision(4));
    return { ...lamp, beam, output: keeps ? lamp.output : { from: 'lumens', lumens } } as Lamp;
  });

/** Takes a measured beam into the setup; its id is made unique and returned. */
export const addMeasuredBeam = (setup: Setup, beam: MeasuredBeam): { setup: Setup; beamId: string } => {
  const beamId = freshId(setup.measuredBeams, beam.id);
  return { setup: { ...setup, measuredBeams: [...setup.measuredBeams, { ...beam, id: beamId }] }, beamId };
};

/** A lamp put into the bag; its id is made unique and returned. */
export const addLamp = (setup: Setup, lamp: Lamp): { setup: Setup; lampId: string } => {
  const lampId = freshId(setup.lamps, lamp.id);
  return { setup: { ...setup, lamps: [...setup.lamps, { ...lamp, id: lampId }] }, lampId };
};
