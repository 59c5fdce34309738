import { beforeEach, describe, expect, it } from 'vitest';
import { fitStep, goToStep, putAway } from '../../../app/web/lessons/go-to-step.ts';
import { openNewest } from '../../../app/web/library/open-newest.ts';
import { useApp } from '../../../app/web/state/app-store.ts';
import { useSession } from '../../../app/web/state/session.ts';
import type { Lesson, Setup } from '../../../core/setup/schema/setup.ts';

const stones = useApp.getState().history.present;
const named = (id: string): Setup => ({ ...stones, id });
/** A file on its way. */
const onItsWay = () => {
  let [arrive, fail] = [(_: Setup): void => undefined, (): void => undefined];
  const coming = new Promise<Setup>((resolve, reject) => {
    [arrive, fail] = [resolve, () => reject(new Error('no network'))];
  });
  return { load: () => coming, arrive: (setup: Setup) => arrive(setup), fail: () => fail() };
};
const present = () => useApp.getState().history.present.id;

describe('documents that are fetched', () => {
  it('a lesson that arrives late does not replace what was opened since, whichever came first', async () => {
    const [first, second] = [onItsWay(), onItsWay()];
    const opened = [openNewest(first.load), openNewest(second.load)];
    second.arrive(named('second'));
    await opened[1];
    first.arrive(named('first'));
    expect(await Promise.all(opened)).toEqual([false, true]);
    expect(present()).toBe('second');

    const [slow, slower] = [onItsWay(), onItsWay()];
    const both = [openNewest(slow.load), openNewest(slower.load)];
    slow.arrive(named('slow'));
    await both[0];
    expect(present()).toBe('second');
    slower.arrive(named('slower'));
    await both[1];
    expect(present()).toBe('slower');
  });

  it('one that can’t be fetched fails and leaves what is open', async () => {
    const before = present();
    const lost = onItsWay();
    const opened = openNewest(lost.load);
    lost.fail();
    await expect(opened).rejects.toThrow('no network');
    expect(present()).toBe(before);
  });

  it('the same document opened again counts as an opening; an edit and an undo do not', async () => {
    const before = useApp.getState().openings;
    await openNewest(() => stones);
    await openNewest(() => stones);
    useApp.getState().edit((setup) => ({ ...setup, note: 'x' }));
    useApp.getState().undo();
    expect(useApp.getState().openings).toBe(before + 2);
  });
});

describe('a lesson whose document changes', () => {
  const step = (schemeId: string, asks = false): Lesson['steps'][number] => ({
    title: schemeId,
    text: 'Look.',
    schemeIds: [schemeId],
    predict: asks ? { passId: 'key', subjectId: 'stone-1' } : null,
  });
  const lesson: Lesson = { steps: [step('side'), step('front', true), step('back')] };
  beforeEach(() => {
    useApp.getState().open(stones);
    goToStep(lesson, 0);
  });
  const at = () => useSession.getState().lessonStep;

  it('stays at its step; with fewer steps it is at the last', () => {
    goToStep(lesson, 2);
    fitStep({ steps: lesson.steps.map((each) => ({ ...each })) });
    expect(at()).toBe(2);
    fitStep({ steps: lesson.steps.slice(0, 2) });
    expect(at()).toBe(1);
    // what that step asks for is hidden
    expect(useSession.getState().hidesAnswer).toBe(true);
    fitStep(lesson);
    expect(at()).toBe(1);
  });

  it('put away it stays away; gone, it takes what it hid with it', () => {
    putAway();
    fitStep({ steps: lesson.steps.slice(0, 1) });
    expect(at()).toBeNull();
    goToStep(lesson, 1);
    fitStep(null);
    expect(useSession.getState()).toMatchObject({ lessonStep: null, hidesAnswer: false, pointing: null });
  });

  it('a question that is asked no more hides nothing', () => {
    goToStep(lesson, 1);
    fitStep({ steps: [step('side'), step('front'), step('back')] });
    expect(useSession.getState()).toMatchObject({ lessonStep: 1, hidesAnswer: false, pointing: null });
  });
});
