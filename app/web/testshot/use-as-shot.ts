import { useMemo, useState } from 'react';
import type { Frame, Lamp, Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { Photo } from '../photo/use-photo.ts';
import { loggedCount } from '../state/edits/night-photo-edits.ts';
import { type HeldCount, takeCounts, takePhotoSettings } from '../state/edits/test-shot-edits.ts';

/** A frame as a photo of it was shot. */
export interface AsShot {
  /** Whether the frame has the exposure of the photo. */
  readonly isTaken: boolean;
  /** The lamp's passes in the hand, and how long it was really on in each. */
  readonly held: readonly { readonly pass: Pass; readonly seconds: number }[];
  readonly setHeld: (passId: string, seconds: number) => void;
  /** The setup with the exposure of the photo and the counts held; the same objects where it has them already. */
  readonly setupAsShot: Setup;
  readonly schemeAsShot: Scheme;
  readonly frameAsShot: Frame;
}

/** The frame with the photo’s exposure, and with the counts that were held: as typed, or as the log of nights has them. */
export const useAsShot = (
  setup: Setup,
  scheme: Scheme,
  frame: Frame,
  lamp: Lamp | null,
  settings: Photo['settings'],
): AsShot => {
  const [typed, setTyped] = useState<Readonly<Record<string, number>>>({});
  const exposed = useMemo(
    () => (settings ? takePhotoSettings(setup, { schemeId: scheme.id, frameId: frame.id }, settings) : setup),
    [setup, scheme.id, frame.id, settings],
  );
  const held = useMemo(
    () =>
      frame.passes
        .filter((pass) => pass.lampId === lamp?.id && pass.held === 'hand')
        .map((pass) => {
          const logged = settings?.at ? loggedCount(setup, scheme.id, pass.id, settings.at) : null;
          return { pass, seconds: typed[pass.id] ?? logged ?? pass.off - pass.on };
        }),
    [setup, scheme.id, frame, lamp?.id, settings, typed],
  );
  const setupAsShot = useMemo(() => {
    const counts: HeldCount[] = held.map(({ pass, seconds }) => ({ passId: pass.id, seconds }));
    return takeCounts(exposed, { schemeId: scheme.id, frameId: frame.id }, counts);
  }, [exposed, held, scheme.id, frame.id]);
  const schemeAsShot = setupAsShot.schemes.find(({ id }) => id === scheme.id) ?? scheme;
  const frameAsShot = schemeAsShot.frames.find(({ id }) => id === frame.id) ?? frame;
  const setHeld = (passId: string, seconds: number) => setTyped((now) => ({ ...now, [passId]: seconds }));
  return { isTaken: exposed === setup, held, setHeld, setupAsShot, schemeAsShot, frameAsShot };
};
