import { bench } from './bench.ts';
import { boat } from './boat.ts';
import { boulderPile } from './boulder-pile.ts';
import { car } from './car.ts';
import { cart } from './cart.ts';
import { carvedSlab } from './carved-slab.ts';
import { chapel } from './chapel.ts';
import { drystoneWall } from './drystone-wall.ts';
import { fence } from './fence.ts';
import { hut } from './hut.ts';
import { jetty } from './jetty.ts';
import type { Kit } from './kit.ts';
import { naturalArch } from './natural-arch.ts';
import { person } from './person.ts';
import { silo } from './silo.ts';
import { standingStone } from './standing-stone.ts';
import { tent } from './tent.ts';
import { tree } from './tree.ts';
import { van } from './van.ts';
import { well } from './well.ts';
import { windmill } from './windmill.ts';

/** The kits in the order in which they are offered. */
export const allKits: readonly Kit[] = [
  drystoneWall,
  hut,
  chapel,
  standingStone,
  carvedSlab,
  tree,
  boulderPile,
  naturalArch,
  boat,
  jetty,
  tent,
  fence,
  person,
  bench,
  well,
  cart,
  car,
  van,
  windmill,
  silo,
];

/** The kit of a name; null where this program does not know it. */
export const kitNamed = (name: string): Kit | null => allKits.find((kit) => kit.name === name) ?? null;
