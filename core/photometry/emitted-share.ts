import { coneSolidAngle, isMeasured, type LobeBeam, spillLevelPerLumen } from './beam.ts';
import { fluxWithin } from './distribution-flux.ts';
import { type Emitter, spotIntensityPerLumen } from './emitter.ts';

/** Flux that a lobe and its spill send into a cone, per lumen. */
const lobeWithin = (beam: LobeBeam, cosLimit: number): number => {
  const { exponent, cosSpill, cosSpillEven, spillShare } = beam;
  const lobe = (1 - spillShare) * (1 - Math.max(cosLimit, 0) ** (exponent + 1));
  const even = coneSolidAngle(Math.max(cosLimit, cosSpillEven));
  const width = cosSpillEven - cosSpill;
  // the soft edge is a straight line in the cosine, so its flux is a triangle less what the limit cuts off
  const cut = Math.min(Math.max((cosLimit - cosSpill) / width, 0), 1);
  const edge = width > 0 ? Math.PI * width * (1 - cut ** 2) : 0;
  return lobe + spillLevelPerLumen(beam) * (even + edge);
};

const steps = 64;

/** Flux of a line source into a cone square to it, per lumen, by the middles of a grid even in solid angle. */
const tubeWithin = (emitter: Emitter, cosLimit: number): number => {
  const pose = { position: [0, 0, 0], axis: [0, 0, 1] } as const;
  const bare: Emitter = { shape: emitter.shape, halfWidthMetres: 1, halfHeightMetres: 0, beam: emitter.beam };
  let sum = 0;
  for (let i = 0; i < steps; i++)
    for (let j = 0; j < steps; j++) {
      const cos = cosLimit + ((i + 0.5) / steps) * (1 - cosLimit);
      const sin = Math.sqrt(1 - cos * cos);
      const turn = (2 * Math.PI * (j + 0.5)) / steps;
      sum += spotIntensityPerLumen(bare, pose, [sin * Math.cos(turn), sin * Math.sin(turn), cos], null);
    }
  return (sum / steps ** 2) * coneSolidAngle(cosLimit);
};

/** Share of a lamp's flux that gets past what hangs in front of it: 1 without a snoot. Cloth's loss is told in stops elsewhere. */
export const emittedShare = (emitter: Emitter): number => {
  const { front, shape, beam } = emitter;
  if (!front || front.cosSnoot <= -1) return 1;
  const { cosSnoot, spreadShare } = front;
  if (shape === 'sphere') return (1 - cosSnoot) / 2;
  if (shape === 'tube') return tubeWithin(emitter, cosSnoot);
  const bare = isMeasured(beam)
    ? beam.perLumen * fluxWithin(beam.distribution, Math.acos(cosSnoot))
    : lobeWithin(beam, cosSnoot);
  // what cloth spreads leaves with the cosine: 1 - cos^2 of it goes into the cone
  return bare + spreadShare * (1 - Math.max(cosSnoot, 0) ** 2 - bare);
};
