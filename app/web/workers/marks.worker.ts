import type { Scheme } from '../../../core/setup/schema/setup.ts';
import type { MarksAnswer, MarksRequest } from './marks-messages.ts';
import { setupKeeper } from './request-parts.ts';
import { schemeMarks } from './scheme-marks.ts';

const setupOf = setupKeeper();

self.onmessage = ({ data }: MessageEvent<MarksRequest>) => {
  const setup = setupOf(data);
  const scheme = setup.schemes.find(({ id }) => id === data.schemeIds[0]) as Scheme;
  const answer: MarksAnswer = { id: data.id, schemeId: scheme.id, marks: schemeMarks(setup, scheme, data) };
  self.postMessage(answer);
};
