import { Group, PerspectiveCamera, Scene } from 'three';
import { TransformControls } from 'three-stdlib';
import { describe, expect, it, vi } from 'vitest';
import { groupWith } from '../../../app/web/state/edits/subject-groups.ts';
import { createAppStore } from '../../../app/web/state/store.ts';
import { handleDrag } from '../../../app/web/walkaround/handle-drag.ts';
import { type HeldThing, heldThing } from '../../../app/web/walkaround/held-thing.ts';
import { releaseHandles } from '../../../app/web/walkaround/release-handles.ts';
import { blockSubject, placeWith } from './subject-setups.ts';

// three's handles compare what they listen on with the page
vi.stubGlobal('document', {});
/** As much of an element as they need. */
const element = () =>
  Object.assign(new EventTarget(), {
    style: {},
    ownerDocument: new EventTarget(),
    getBoundingClientRect: () => ({ left: 0, top: 0, width: 200, height: 200 }),
  });
interface Pointer {
  readonly x: number;
  readonly y: number;
  readonly button: number;
}
/** What three's handles do with the pointer, which their type keeps to itself. */
interface Inside {
  axis: string | null;
  dragging: boolean;
  pointerDown(pointer: Pointer): void;
  pointerMove(pointer: Pointer): void;
  pointerUp(pointer: Pointer): void;
}

/** Two blocks in a group, 4 m apart, and three's own handles on the first, seen from the south and above. */
const scene = (turns: boolean) => {
  const start = groupWith(
    placeWith(
      blockSubject('a', [1, 1, 1], { position: [0, 8, 0] }),
      blockSubject('b', [1, 1, 1], { position: [4, 8, 0] }),
    ),
    'a',
    'b',
  );
  const app = createAppStore(start);
  app.getState().select({ kind: 'subject', subjectId: 'a' });
  const heldNow = () => heldThing(app.getState().history.present, 'scheme', app.getState().selection) as HeldThing;
  const proxy = new Group();
  const eye = new PerspectiveCamera(50, 1, 0.1, 400);
  eye.position.set(0, 6, 4);
  eye.lookAt(0, 0, -8);
  const controls = new TransformControls(eye, element() as unknown as HTMLElement);
  const inside = controls as unknown as Inside;
  const world = new Scene().add(proxy, controls);
  const drag = handleDrag(proxy, { ...app.getState(), isUnderWay: () => app.getState().history.gestureStart !== null });
  drag.hold(heldNow());
  // as the page does: what is held is told anew whenever the setup is another
  app.subscribe((now, before) => now.history.present !== before.history.present && drag.hold(heldNow()));
  controls.attach(proxy);
  controls.setMode(turns ? 'rotate' : 'translate');
  const on = (name: string, then: () => void) => controls.addEventListener(name as never, then as never);
  on('mouseDown', () => drag.begin());
  on('objectChange', () => drag.change(turns));
  on('mouseUp', () => drag.end(true));
  const press = () => {
    world.updateMatrixWorld();
    inside.axis = turns ? 'Y' : 'X';
    inside.pointerDown({ x: 0.1, y: 0.05, button: 0 });
    expect(inside.dragging).toBe(true);
  };
  const pull = (x: number) => {
    world.updateMatrixWorld();
    inside.pointerMove({ x, y: 0.05, button: -1 });
  };
  const lift = () => inside.pointerUp({ x: 0, y: 0, button: 0 });
  const standsAt = () => ({ at: proxy.position.toArray(), turn: proxy.rotation.y });
  const shouldStand = () => ({ at: [...heldNow().position], turn: heldNow().turnRadians });
  const turnNow = () => app.getState().history.present.subjects[0]?.turnDegrees as number;
  return { app, start, controls, inside, drag, press, pull, lift, standsAt, shouldStand, turnNow };
};

describe('a drag of the handles', () => {
  it('is one entry of history, and the handles stand where the thing does: to the millimetre', () => {
    const { app, start, press, pull, lift, standsAt, shouldStand } = scene(false);
    press();
    pull(0.2);
    pull(0.31234567);
    lift();
    expect(app.getState().history.past).toEqual([start]);
    const [east] = app.getState().history.present.subjects[0]?.position ?? [0];
    expect(east).toBeGreaterThan(0.5);
    expect(Math.abs(east * 1000 - Math.round(east * 1000))).toBeLessThan(1e-9);
    expect(standsAt()).toEqual(shouldStand());
  });

  it('that turns goes round as far as the pointer does, past half a turn, and with steps to whole ones', () => {
    const { drag, turnNow, standsAt, shouldStand } = scene(true);
    const radians = (degrees: number) => (degrees * Math.PI) / 180;
    drag.begin(radians(170));
    // anticlockwise for the pointer; the document counts clockwise
    drag.change(true, radians(-160));
    expect(turnNow()).toBeCloseTo(-30, 6);
    drag.change(true, radians(-100));
    expect(turnNow()).toBeCloseTo(-90, 6);
    drag.change(true, radians(-92), Math.PI / 12);
    expect(turnNow()).toBeCloseTo(-105, 6);
    drag.end(true);
    expect(standsAt()).toEqual(shouldStand());
  });

  it('of a group that turns leaves the handles at the subject, which went round the middle', () => {
    const { press, pull, lift, standsAt, shouldStand, turnNow } = scene(true);
    press();
    pull(0.3);
    lift();
    expect(Math.abs(turnNow())).toBeGreaterThan(2);
    expect(Math.abs((shouldStand().at[2] as number) + 8)).toBeGreaterThan(0.05);
    expect(standsAt()).toEqual(shouldStand());
  });

  it.each(['cancel', 'undo'] as const)(
    'taken back by %s is over: the rest does nothing, and the next begins at the start',
    (how) => {
      const { app, start, press, pull, lift, standsAt, shouldStand, turnNow } = scene(true);
      press();
      pull(0.3);
      const turned = turnNow();
      app.getState()[how]();
      expect(standsAt()).toEqual(shouldStand());
      pull(0.5);
      expect(app.getState().history.present).toBe(start);
      expect(standsAt()).toEqual(shouldStand());
      lift();
      expect(standsAt()).toEqual(shouldStand());
      press();
      pull(0.3);
      lift();
      // the same pull again turns by as much as the first did, not by both
      expect(turnNow()).toBe(turned);
    },
  );

  it.each([
    [true, 1],
    [false, 0],
  ])('that the page ends (kept: %s) is over for three’s handles too', (keeps, entries) => {
    const { app, inside, controls, drag, press, pull } = scene(false);
    const told = vi.fn();
    controls.addEventListener('dragging-changed' as never, told as never);
    press();
    pull(0.3);
    expect(drag.end(keeps)).toBe(true);
    releaseHandles(controls);
    expect(inside.dragging).toBe(false);
    // the eye can be turned again
    expect(told.mock.lastCall?.[0]).toMatchObject({ value: false });
    expect(app.getState().history).toMatchObject({ gestureStart: null });
    expect(app.getState().history.past).toHaveLength(entries);
    const { present } = app.getState().history;
    pull(0.6);
    expect(app.getState().history.present).toBe(present);
    expect(drag.end(true)).toBe(false);
  });
});
