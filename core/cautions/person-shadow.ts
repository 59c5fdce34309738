import { anyHit } from '../geometry/cast-ray.ts';
import { distance, normalize, sub } from '../geometry/vec.ts';
import { targetSurface } from '../readings/target-reading.ts';
import type { Pass } from '../setup/schema/setup.ts';
import { isInTheWay } from '../walk/body.ts';
import { feetOf } from '../world/holder.ts';
import { placeAtTime } from '../world/world.ts';
import type { PassCase, PassRule } from './caution.ts';
import { type LampLight, lampLight } from './lamp-light.ts';
import { limits } from './limits.ts';

/** Moments that two passes share which are looked at. */
const looks = 16;

/** Share of another lamp's light on its target that whoever holds this one stands in. */
const shadedShare = ({ world, pass, light }: PassCase, other: Pass, { source }: LampLight): number => {
  const { stage, view } = world;
  const [from, to] = [Math.max(pass.on, other.on), Math.min(pass.off, other.off)];
  if (from >= to) return 0;
  let shaded = 0;
  for (let k = 0; k < looks; k++) {
    const seconds = from + ((to - from) * (k + 0.5)) / looks;
    const lamp = placeAtTime(source, other, seconds);
    const target = targetSurface(stage, view.position, lamp.aim);
    if (!target || !isInTheWay(feetOf(stage, placeAtTime(light.source, pass, seconds)), lamp.position, target.place))
      continue;
    // where no light would land anyway, nobody takes any
    const toLamp = sub(lamp.position, target.shadowOrigin);
    if (anyHit(stage.tree, target.shadowOrigin, normalize(toLamp), distance(lamp.position, target.shadowOrigin)))
      continue;
    shaded++;
  }
  return ((to - from) * shaded) / looks / (other.off - other.on);
};

/** Whoever holds this lamp stands between another that is on as well and what that one lights. */
export const personShadow: PassRule = (passCase) => {
  const { pass, frame, worldFrame } = passCase;
  if (pass.held !== 'hand') return null;
  let [value, name] = [0, ''];
  for (const other of frame.passes) {
    if (other === pass) continue;
    const share = shadedShare(passCase, other, lampLight(worldFrame, other.id));
    if (share > value) [value, name] = [share, other.name];
  }
  if (value <= limits.personShadowShare) return null;
  return {
    code: 'person-shadow',
    severity: 'warning',
    passId: pass.id,
    message: `${pass.name}: you stand between “${name}” and what it lights, for ${Math.round(100 * value)} % of its time. Your shadow falls there. Step aside, or light one after the other.`,
    value,
    limit: limits.personShadowShare,
  };
};
