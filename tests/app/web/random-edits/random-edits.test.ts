import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptySetup } from '../../../../app/web/state/empty-setup.ts';
import { createAppStore } from '../../../../app/web/state/store.ts';
import { formatSetup } from '../../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../../core/world/world.ts';
import { richSetup } from '../../../core/setup/rich-setup.ts';
import { diceOf } from './dice.ts';
import { frameSteps } from './frame-steps.ts';
import { pageSteps } from './page-steps.ts';
import { passSteps } from './pass-steps.ts';
import { placeSteps } from './place-steps.ts';
import { type App, type Steps, sceneOf } from './step.ts';
import { subjectSteps } from './subject-steps.ts';

const sample = (name: string): Setup => parseSetup(readFileSync(`assets/setups/${name}.json`, 'utf8'));
const starts: readonly (readonly [string, () => Setup])[] = [
  ['three standing stones', () => sample('three-stones')],
  ['an empty place', emptySetup],
  ['a lesson', () => sample('lesson-high-and-low')],
  ['a bothy under the sky of the hour', () => sample('bothy-in-snow')],
  ['a setup that has one of everything', () => parseSetup(JSON.stringify(richSetup()))],
];

const steps: Steps = { ...passSteps, ...frameSteps, ...subjectSteps, ...placeSteps, ...pageSteps };
const names = Object.keys(steps);
/** Steps of a run; the history keeps 200, so that each run can be undone to its start. */
const runLength = 200;
const runs = 2;
/** Steps that look elsewhere and change nothing. */
const looksOnly = ['dragTakenBack', 'dragUndone', 'undoAndRedo', 'select', 'chooseScheme', 'chooseFrame', 'showBlend'];
const step = fc.record({ name: fc.constantFrom(...names), seed: fc.integer() });

/** Times that each step changed the setup, over all runs. */
const took = new Map(names.map((name) => [name, 0]));
let edited = 0;

/** What is saved can be opened, and is the same then. */
const expectSaves = (setup: Setup, when: string): void => {
  const text = formatSetup(setup);
  let read: Setup | Error;
  try {
    read = parseSetup(text);
  } catch (error) {
    read = error as Error;
  }
  if (read instanceof Error) expect.fail(`${when}: ${read.message}`);
  // the same text is the same setup; another order of its fields is no fault
  if (formatSetup(read) !== text) expect(read, when).toEqual(setup);
};

/** Everything that the page points to is there. */
const expectThere = (app: App): void => {
  const { history, schemeId, frameId, selection } = app.getState();
  const { schemes, subjects, hazards } = history.present;
  const frames = schemes.find(({ id }) => id === schemeId)?.frames ?? [];
  expect(frames.map(({ id }) => id)).toContain(frameId);
  if (selection?.kind === 'pass') {
    const passes = frames.find(({ id }) => id === selection.frameId)?.passes ?? [];
    expect(passes.map(({ id }) => id)).toContain(selection.passId);
  } else if (selection?.kind === 'subject') expect(subjects.map(({ id }) => id)).toContain(selection.subjectId);
  else if (selection?.kind === 'hazard') expect(hazards.map(({ id }) => id)).toContain(selection.hazardId);
};

const undoAll = (app: App): void => {
  while (app.getState().history.past.length > 0) {
    app.getState().undo();
    expectThere(app);
  }
};
const redoAll = (app: App): void => {
  while (app.getState().history.future.length > 0) {
    app.getState().redo();
    expectThere(app);
  }
};

const run = (start: Setup, taken: readonly { readonly name: string; readonly seed: number }[]): void => {
  const text = JSON.stringify(start);
  const app = createAppStore(start);
  for (const { name, seed } of taken) {
    const before = app.getState().history.present;
    const dice = diceOf(seed);
    try {
      steps[name]?.(sceneOf(app, dice), dice);
    } catch (error) {
      throw new Error(`${name} with seed ${seed} threw`, { cause: error });
    }
    const { present } = app.getState().history;
    if (present === before) continue;
    edited++;
    took.set(name, (took.get(name) ?? 0) + 1);
    expectThere(app);
    expectSaves(present, `after ${name} with seed ${seed}`);
  }
  const { present } = app.getState().history;
  for (const scheme of present.schemes) buildWorld(present, scheme);
  undoAll(app);
  expect(JSON.stringify(app.getState().history.present)).toBe(text);
  redoAll(app);
  expect(app.getState().history.present).toBe(present);
};

describe('1,000 random edits of the page', () => {
  it.each(starts)(
    'from %s: each can be saved, points to what is there, and undoes to the start (seed 91)',
    (_, start) => {
      const all = fc.array(step, { minLength: runLength, maxLength: runLength });
      for (const taken of fc.sample(all, { numRuns: runs, seed: 91 + starts.findIndex(([, each]) => each === start) }))
        run(start(), taken);
    },
  );

  it('something changed, by each kind of edit', () => {
    expect(edited).toBeGreaterThan(1000);
    const idle = [...took].flatMap(([name, times]) => (times === 0 ? [name] : []));
    expect(idle).toEqual(looksOnly);
  });
});
