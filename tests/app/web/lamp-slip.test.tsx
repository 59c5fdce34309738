import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { LampSlip } from '../../../app/web/inspector/LampSlip.tsx';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

const setup = onePassSetup({
  camera: { position: [0, 0, 1], aim: [0, 8, 1] },
  pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
});
const [scheme] = setup.schemes as [Setup['schemes'][number]];
const [frame] = scheme.frames as [(typeof scheme.frames)[number]];
const [pass] = frame.passes as [(typeof frame.passes)[number]];
const [lamp] = setup.lamps as [Setup['lamps'][number]];

const slip = (hasFailed: boolean) =>
  renderToStaticMarkup(
    <LampSlip
      schemeId={scheme.id}
      frame={frame}
      pass={pass}
      lamp={lamp}
      reading={undefined}
      hasFailed={hasFailed}
      cautions={[]}
      isOpen={false}
    />,
  );

describe('the slip of a lamp without a reading', () => {
  it('says that it is being worked out, but not when that failed', () => {
    expect(slip(false)).toContain('working it out…');
    expect(slip(true)).not.toContain('working it out…');
    expect(slip(true)).toContain('could not be worked out');
  });
});
