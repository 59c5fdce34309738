import { create } from 'zustand';
import type { Position, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from './app-store.ts';
import { comparedSchemes, mostCompared, type Pair } from './compared-schemes.ts';
import type { PassPlace } from './edits/within.ts';
import { type Marks, noMarks } from './picture-marks.ts';

/** What fills the left of the page. */
export type Room = 'viewfinder' | 'compare' | 'sweep' | 'card';

/** What a phone shows under the picture, one at a time. */
export type PhoneRoom = 'plan' | 'lamps' | 'subjects' | 'exposure' | 'time' | 'notes';

/** A place on the ground: [east, north] in metres. */
type GroundPlace = readonly [east: number, north: number];

/** A lesson asks where the tip of a shadow falls. */
export interface Pointing {
  /** Where the user pointed; null before that. */
  readonly at: GroundPlace | null;
  /** Where the tip is; null until it is revealed, and for a shadow without end. */
  readonly truth: GroundPlace | null;
}

/** The measuring tape: the places of its ends, [east, north, up] in metres; null = not laid yet. */
export interface Tape {
  readonly from: Position | null;
  readonly to: Position | null;
}

/** A photo of a test frame that a lamp is to be judged by. */
export interface TestShotWish {
  /** null = to be chosen. */
  readonly file: File | null;
  /** The lamp in question, and its frame; null = those that are at hand. */
  readonly lampId: string | null;
  readonly frameId: string | null;
}

/** Looks of the page that are neither saved nor undone. */
interface Session {
  readonly room: Room;
  readonly marks: Marks;
  /** Schemes that the user chose to compare; null = the first few. */
  readonly comparedIds: readonly string[] | null;
  readonly showsUnlit: boolean;
  /** Whether camera settings are changed in all compared schemes at once. */
  readonly locksExposure: boolean;
  /** Whether plan and slips make room for the tiles. */
  readonly isWide: boolean;
  /** What a phone shows under the picture. */
  readonly phoneRoom: PhoneRoom;
  /** Whether the viewfinder shows the place by day, to build and frame by. */
  readonly showsByDay: boolean;
  /** null = the tape is put away. */
  readonly tape: Tape | null;
  /** A file with a scan that is being brought in; null = none. */
  readonly scanFile: File | null;
  /** A test shot that is being looked at; null = none. */
  readonly testShot: TestShotWish | null;
  /** Whether the bag of the user's own lamps is open. */
  readonly showsBag: boolean;
  /** Whether it is told what the page is. */
  readonly showsAbout: boolean;
  /** The pass whose sweep is being painted over the picture; null = none. */
  readonly paints: PassPlace | null;
  /** Which waypoint of the selected pass is open in its slip, from 0; null = none. */
  readonly waypoint: number | null;
  /** Whether the plan and the walkaround show the ways on foot. */
  readonly showsWalks: boolean;
  /** null = all tiles side by side. */
  readonly pair: Pair | null;
  /** Step of the lesson that is followed; null = the lesson is put away. */
  readonly lessonStep: number | null;
  /** Whether the picture and the shadows are hidden until the user has pointed. */
  readonly hidesAnswer: boolean;
  /** What is asked and answered on the plan; null = nothing is asked. */
  readonly pointing: Pointing | null;
  set(part: Partial<Omit<Session, 'set' | 'mark'>>): void;
  mark(name: keyof Marks, isOn: boolean): void;
}

export const useSession = create<Session>((set) => ({
  room: 'viewfinder',
  marks: noMarks,
  comparedIds: null,
  showsUnlit: true,
  locksExposure: true,
  isWide: false,
  phoneRoom: 'plan',
  showsByDay: false,
  tape: null,
  scanFile: null,
  testShot: null,
  showsBag: false,
  showsAbout: false,
  paints: null,
  waypoint: null,
  showsWalks: true,
  pair: null,
  lessonStep: null,
  hidesAnswer: false,
  pointing: null,
  set: (part) => set(part),
  mark: (name, isOn) => set(({ marks }) => ({ marks: { ...marks, [name]: isOn } })),
}));

const hasPasses = ({ schemes }: Setup): boolean =>
  schemes.some(({ frames }) => frames.some(({ passes }) => passes.length > 0));

/** Which thing of which scheme is selected: selecting it again is no change. */
const selectedKey = ({ schemeId, selection }: ReturnType<typeof useApp.getState>): string =>
  JSON.stringify([schemeId, selection]);

/** What a change of the document does to the looks of the page. */
const takeUp = (state: ReturnType<typeof useApp.getState>, old: ReturnType<typeof useApp.getState>): void => {
  const [present, before] = [state.history.present, old.history.present];
  // another document may use the same ids for its schemes; a place without lamps is dark, so it is shown by day
  if (state.openings !== old.openings || present.id !== before.id)
    useSession.setState({ comparedIds: null, pair: null, showsByDay: !hasPasses(present) });
  else if (hasPasses(present) && !hasPasses(before)) useSession.setState({ showsByDay: false });
};

useApp.subscribe((state, old) => {
  if (selectedKey(state) !== selectedKey(old)) useSession.setState({ paints: null, waypoint: null });
  if (state.history.present !== old.history.present) takeUp(state, old);
  if (state.schemeId !== old.schemeId) comparePresent();
});

/** Puts the present scheme among those that are compared; where there is no room, in place of the last. */
const comparePresent = (): void => {
  const { history, schemeId } = useApp.getState();
  const { room, comparedIds } = useSession.getState();
  const ids = comparedSchemes(history.present, comparedIds).map(({ id }) => id);
  if (room === 'compare' && !ids.includes(schemeId))
    useSession.setState({ comparedIds: [...ids.slice(0, mostCompared - 1), schemeId] });
};
useSession.subscribe((state, old) => {
  if (state.room !== old.room) comparePresent();
});
