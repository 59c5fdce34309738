import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { seenSkyOf } from '../readings/frame-sky.ts';
import { percentile } from '../readings/percentile.ts';
import { glowLuminance } from '../sky/glow-luminance.ts';
import { seenAlong } from '../trace/sky-picture.ts';
import type { SchemeRule } from './caution.ts';
import { limits } from './limits.ts';
import { isStarFrame } from './star-frame.ts';

/** The glow of a town lies over the core of the Milky Way, brighter than all the rest of the sky there. */
export const glowOverCore: SchemeRule = ({ setup, scheme, world, sky }) => {
  const star = scheme.frames.find((frame) => isStarFrame(scheme, frame));
  const seen = world.frames[0] && seenSkyOf(world.frames[0]);
  if (!sky || !star || !seen || !sky.reading.core.isInFrame) return [];
  const glows = seen.domes.map((dome) => ({
    at: glowLuminance(dome, seen.input.northRadians),
    factor: dome.luminanceAt10DegreesCdM2,
  }));
  const ratios = sky.region.open.map((toward) => {
    const own = glows.map(({ at, factor }) => factor * luminanceOfLinearSrgb(at(toward)));
    const sum = own.reduce((a, b) => a + b, 0);
    return { own, over: sum / Math.max(luminanceOfLinearSrgb(seenAlong(seen, toward)) - sum, 1e-12) };
  });
  // the centre of the core is seen, so there is one at least
  const value = percentile(
    ratios.map(({ over }) => over),
    0.5,
  );
  const limit = limits.glowOverCore;
  if (value <= limit) return [];
  const totals = glows.map((_, i) => ratios.reduce((sum, { own }) => sum + (own[i] as number), 0));
  const town = setup.place.glowDomes[totals.indexOf(Math.max(...totals))];
  return [
    {
      code: 'glow-over-core',
      severity: 'note',
      frameId: star.id,
      message: `${star.name}: the glow of ${town?.name ? `“${town.name}”` : 'a town'} is ${value.toFixed(1)} times as bright as the sky with the core of the Milky Way in it. Wait until the core stands higher or over darker land, or shoot from a place with the town behind you.`,
      value,
      limit,
    },
  ];
};
