import type { SchemeReport } from '../cautions/setup-report.ts';
import type { GroundPoint } from '../geometry/hull.ts';
import type { Frame, Lamp, Pass, Scheme, Setup, Waypoint } from '../setup/schema/setup.ts';
import type { World } from '../world/world.ts';
import { aimWord } from './aim-word.ts';
import type { CardRow, CardStand } from './card-row.ts';
import { cardStand, type Reckoning } from './card-stand.ts';
import { gelWord } from './gel-word.ts';

/** Ways shorter than this are the sway of a hand, metres; our choice. */
const leastWayMetres = 0.3;

const isMoved = ({ waypoints }: Pass): boolean =>
  waypoints.some(({ position: [east, north] }) => {
    const first = firstOf(waypoints);
    return Math.hypot(east - first.position[0], north - first.position[1]) >= leastWayMetres;
  });

/** As high as a lamp in a raised hand goes, metres; higher takes a pole. Common practice, no published source. */
const reachMetres = 2.4;

/** A stand in the word for how whoever holds the lamp gets it so high: beyond an arm, but not beyond a pole. */
const inReach = (stand: CardStand, isHeld: boolean): CardStand =>
  isHeld && stand.heightWord === 'overhead' && stand.heightMetres > reachMetres
    ? { ...stand, heightWord: 'on a pole' }
    : stand;

/** A pass has one waypoint at least. */
const firstOf = (waypoints: Pass['waypoints']) => waypoints[0] as Waypoint;
const lastOf = (waypoints: Pass['waypoints']) => waypoints.at(-1) as Waypoint;

/** What a pass is aimed at; where that changes on its way, from what to what. */
const aimOf = (world: World, { waypoints }: Pass): string => {
  const words = [firstOf(waypoints), lastOf(waypoints)].map(({ aim }) => aimWord(world, aim));
  return [...new Set(words)].join(' to ');
};

/** A frame's passes in the order in which their lamps go on; of those that go on together, as listed. */
const inOrder = ({ passes }: Frame): Pass[] => [...passes].sort((a, b) => a.on - b.on);

/** The numbered rows of a scheme: frames in order, in each the passes in the order in which their lamps go on. */
export const cardRows = (
  setup: Setup,
  scheme: Scheme,
  report: SchemeReport,
  world: World,
  reckoning: Reckoning,
): CardRow[] => {
  const listed = scheme.frames.flatMap((frame, f) => inOrder(frame).map((pass) => ({ frame, f, pass })));
  return listed
    .map(({ frame, f, pass }): Omit<CardRow, 'number'> => {
      const [first, last] = [firstOf(pass.waypoints), lastOf(pass.waypoints)];
      const lamp = setup.lamps.find(({ id }) => id === pass.lampId) as Lamp;
      // readings may trail the scheme: a pass that was just put in has none yet
      const timing = report.frames[f]?.passes.find(({ passId }) => passId === pass.id)?.timing;
      const moves = isMoved(pass);
      const isHeld = pass.held === 'hand';
      const way = (moves ? pass.waypoints : [first]).map(({ position }): GroundPoint => [position[0], position[1]]);
      return {
        frameId: frame.id,
        passId: pass.id,
        name: pass.name,
        lampName: lamp.name,
        frameNumber: f + 1,
        isHeld,
        start: inReach(cardStand(reckoning, first), isHeld),
        end: moves ? inReach(cardStand(reckoning, last), isHeld) : null,
        way,
        aimWord: aimOf(world, pass),
        levelPercent: pass.levelPercent,
        lowestLevelPercent: lamp.lowestLevelPercent,
        gelWord: gelWord(pass),
        onSeconds: pass.on,
        countSeconds: pass.off - pass.on,
        staysOn: pass.held === 'stand' && pass.on === 0 && pass.off >= frame.seconds,
        strokes: pass.strokes,
        walkSeconds: timing?.walkSeconds ?? null,
        isWalkFromCamera: timing?.isFromCamera ?? false,
        slackSeconds: timing?.slackSeconds ?? null,
        seenSeconds: timing?.visibleSeconds ?? 0,
      };
    })
    .map((row, i) => ({ number: i + 1, ...row }));
};
