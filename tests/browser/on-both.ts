import type { Page } from 'playwright-core';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import { tracePicture } from '../../core/trace/picture.ts';
import { buildWorld } from '../../core/world/world.ts';
import type { Harness } from './harness/main.ts';

interface Size {
  readonly width: number;
  readonly height: number;
  readonly samples: number;
}

/** Which picture of a setup's text is meant. */
interface Frame {
  readonly text: string;
  readonly schemeId: string;
  readonly frameId: string;
}

/** Time for an order to leave for the page before the processor is kept busy here, milliseconds. */
const leaveMilliseconds = 20;

/** Has the page work while the processor works here; both results. */
export const meanwhile = async <OnCard, Here>(onCard: Promise<OnCard>, here: () => Here) => {
  await Promise.race([onCard, new Promise((resolve) => setTimeout(resolve, leaveMilliseconds))]);
  const cpu = here();
  return { gpu: await onCard, cpu };
};

/** A frame as the renderer on the card draws it and as the reference does, both at once. `page` is of the harness. */
export const onBoth = (page: Page, { text, schemeId, frameId }: Frame, size: Size) => {
  const onCard = page.evaluate(
    ([setup, scheme, frame, { width, height, samples }]) =>
      (window as unknown as { harness: Harness }).harness.picture(setup, scheme, frame, width, height, samples),
    [text, schemeId, frameId, size] as const,
  );
  return meanwhile(onCard, () => {
    const setup = parseSetup(text);
    const scheme = setup.schemes.find(({ id }) => id === schemeId);
    if (!scheme) throw new Error(`no scheme ${schemeId}`);
    const world = buildWorld(setup, scheme);
    const frame = world.frames.find(({ id }) => id === frameId);
    if (!frame) throw new Error(`no frame ${frameId}`);
    return tracePicture(world, frame, size);
  });
};
