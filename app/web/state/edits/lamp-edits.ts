import { beamDistanceFromPeak } from '../../../../core/photometry/beam.ts';
import { emitterPeakPerLumen } from '../../../../core/photometry/emitter.ts';
import { luxAtOneMetrePerLumen } from '../../../../core/photometry/open-light.ts';
import type { Beam, Lamp, MeasuredBeam, Setup } from '../../../../core/setup/schema/setup.ts';
import { emitterOf, fluxOf } from '../../../../core/world/lamp-light.ts';
import { type Output, outputFrom } from './lamp-output.ts';
import { renamed } from './plain-name.ts';
import { freshId, replaceById } from './within.ts';

/** Edits of a lamp in the bag: pure, each (setup, lamp, argument) -> setup. They keep every rule that `parseSetup` checks. */

const changeLamp = (setup: Setup, lampId: string, change: (lamp: Lamp) => Lamp): Setup => {
  const lamps = replaceById(setup.lamps, lampId, change);
  return lamps === setup.lamps ? setup : { ...setup, lamps };
};

export const setLampName = (setup: Setup, lampId: string, name: string): Setup =>
  changeLamp(setup, lampId, (lamp) => renamed(lamp, name));

export const setLampKelvin = (setup: Setup, lampId: string, temperatureKelvin: number): Setup =>
  changeLamp(setup, lampId, (lamp) => ({ ...lamp, temperatureKelvin }));

export const setLowestLevel = (setup: Setup, lampId: string, lowestLevelPercent: number): Setup =>
  changeLamp(setup, lampId, (lamp) => ({ ...lamp, lowestLevelPercent }));

/** Sizes that lamps have; which, depends on the kind. */
export type LampSize = 'diameterMm' | 'widthMm' | 'heightMm' | 'lengthMm';

/** Sets a size in millimetres, where the lamp has it. */
export const setLampSize = (setup: Setup, lampId: string, size: LampSize, millimetres: number): Setup =>
  changeLamp(setup, lampId, (lamp) => (size in lamp ? { ...lamp, [size]: millimetres } : lamp));

/** The measured beam that a lamp has; null for others. */
export const measuredBeamOf = (lamp: Lamp): Extract<Beam, { shape: 'measured' }> | null =>
  'beam' in lamp && lamp.beam.shape === 'measured' ? lamp.beam : null;

/** What the box says. "As measured" is refused to a lamp without a measured beam. */
export const setLampOutput = (setup: Setup, lampId: string, output: Output): Setup =>
  changeLamp(setup, lampId, (lamp) =>
    output.from === 'measured' && !measuredBeamOf(lamp) ? lamp : { ...lamp, output },
  );

/** The lamp's light told another way, to four figures, so that switching what the box says does not change the lamp. */
export const restateLampOutput = (setup: Setup, lampId: string, from: Output['from']): Setup => {
  const lamp = setup.lamps.find(({ id }) => id === lampId);
  if (!lamp || lamp.output.from === from) return setup;
  if (from === 'measured') return setLampOutput(setup, lampId, { from });
  const emitter = emitterOf(lamp, setup.measuredBeams);
  const lumens = fluxOf(lamp, setup.measuredBeams);
  const candela = lumens * emitterPeakPerLumen(emitter);
  const value = {
    lumens,
    'peak-candela': candela,
    'beam-distance': beamDistanceFromPeak(candela),
    'lux-at-1-metre': lumens * luxAtOneMetrePerLumen(emitter),
  }[from];
  return setLampOutput(setup, lampId, outputFrom(from, Number(value.toPrecision(4))));
};

/** Whether a kind of lamp can have a beam of that shape. */
export const takesBeam = (lamp: Lamp, shape: Beam['shape']): boolean => {
  if (lamp.kind === 'point') return shape === 'even' || shape === 'measured';
  return (lamp.kind === 'torch' || lamp.kind === 'panel') && shape !== 'even';
};

/**
 * Gives a lamp another beam, where it can have it. A lamp whose output was that of its measured beam keeps its lumens.
 */
export const setLampBeam = (setup: Setup, lampId: string, beam: Beam): Setup =>
  changeLamp(setup, lampId, (lamp) => {
    if (!takesBeam(lamp, beam.shape)) return lamp;
    const keeps = lamp.output.from !== 'measured' || beam.shape === 'measured';
    const lumens = Number(fluxOf(lamp, setup.measuredBeams).toPrecision(4));
    return { ...lamp, beam, output: keeps ? lamp.output : outputFrom('lumens', lumens) } as Lamp;
  });

const isSameBeam = ({ id: _, ...a }: MeasuredBeam, { id: __, ...b }: MeasuredBeam): boolean =>
  JSON.stringify(a) === JSON.stringify(b);

/** Most measured beams of a setup. */
export const maxMeasuredBeams = 8;

/**
 * Gives a lamp the beam and the output of a photometric file, in one step. A beam that the setup already has is used
 * again; those that no lamp uses any more go. The same setup comes back when the lamp takes no measured beam, or when
 * there is no room for one more.
 */
export const setBeamFromFile = (setup: Setup, lampId: string, beam: MeasuredBeam): Setup => {
  const known = setup.measuredBeams.find((each) => isSameBeam(each, beam));
  const added = known ?? { ...beam, id: freshId(setup.measuredBeams, beam.id) };
  const lamps = replaceById(setup.lamps, lampId, (lamp) => {
    if (!takesBeam(lamp, 'measured')) return lamp;
    const turnDegrees = measuredBeamOf(lamp)?.turnDegrees ?? 0;
    return {
      ...lamp,
      beam: { shape: 'measured', beamId: added.id, turnDegrees },
      output: { from: 'measured' },
    } as Lamp;
  });
  if (lamps === setup.lamps) return setup;
  const used = new Set(lamps.map((lamp) => measuredBeamOf(lamp)?.beamId));
  const all = known ? setup.measuredBeams : [...setup.measuredBeams, added];
  const measuredBeams = all.filter(({ id }) => used.has(id));
  return measuredBeams.length > maxMeasuredBeams ? setup : { ...setup, lamps, measuredBeams };
};

/** A lamp put into the bag; its id is made unique and returned. */
export const addLamp = (setup: Setup, lamp: Lamp): { setup: Setup; lampId: string } => {
  const lampId = freshId(setup.lamps, lamp.id);
  return { setup: { ...setup, lamps: [...setup.lamps, { ...lamp, id: lampId }] }, lampId };
};
