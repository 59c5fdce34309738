import type { Beam, Lamp, Setup } from '../../../../core/setup/schema/setup.ts';
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

/** Lanterns and tubes have no beam to set. */
export const setLampBeam = (setup: Setup, lampId: string, beam: Beam): Setup =>
  changeLamp(setup, lampId, (lamp) => (lamp.kind === 'torch' || lamp.kind === 'panel' ? { ...lamp, beam } : lamp));

/** A lamp put into the bag; its id is made unique and returned. */
export const addLamp = (setup: Setup, lamp: Lamp): { setup: Setup; lampId: string } => {
  const lampId = freshId(setup.lamps, lamp.id);
  return { setup: { ...setup, lamps: [...setup.lamps, { ...lamp, id: lampId }] }, lampId };
};
