import { useMemo } from 'react';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { Progress } from '../picture/Progress.tsx';
import { maxSamples } from '../picture/samples.ts';
import { sceneOf, type WantedPicture } from '../picture/scene-of.ts';
import { useScene } from '../picture/use-scene.ts';
import type { ScreenSizes } from '../picture/use-screen-sizes.ts';
import { useApp, useFrame, useSetup } from '../state/app-store.ts';
import { unlitId } from '../state/compared-schemes.ts';
import { useSession } from '../state/session.ts';

interface TileSceneProps {
  readonly schemes: readonly Scheme[];
  /** Whose camera and exposure the picture without lamps has. */
  readonly base: Scheme;
  readonly sizes: ScreenSizes;
}

/** Has the pictures of all tiles made, and says how far they are. */
export const TileScene = ({ schemes, base, sizes }: TileSceneProps) => {
  const setup = useSetup();
  const frame = useFrame();
  const showsBlend = useApp((state) => state.showsBlend);
  const { showsUnlit, marks } = useSession();
  const scene = useMemo(() => {
    const wanted = [
      ...schemes.map((scheme) => ({ scheme, isUnlit: false, screen: `tile/${scheme.id}` })),
      ...(showsUnlit ? [{ scheme: base, isUnlit: true, screen: `tile/${unlitId}` }] : []),
    ];
    const look = marks.levels ? 'levels' : 'picture';
    const pictures = wanted.flatMap((each): WantedPicture[] => {
      const size = sizes.get(each.screen);
      return size ? [{ ...each, setup, look, against: null, marksFull: marks.full, size }] : [];
    });
    // all or nothing: one that is not on the page yet would come later than the others
    if (pictures.length < wanted.length) return null;
    return sceneOf(pictures, { frame: showsBlend ? null : frame, samples: maxSamples });
  }, [setup, schemes, base, showsUnlit, frame, showsBlend, marks.levels, marks.full, sizes]);
  useScene(scene);
  return <Progress />;
};
