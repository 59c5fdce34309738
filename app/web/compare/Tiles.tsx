import { useMemo } from 'react';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { useScreenSizes } from '../picture/use-screen-sizes.ts';
import { useApp, useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { comparedSchemes } from '../state/compared-schemes.ts';
import { moveScheme } from '../state/edits/compare-edits.ts';
import { frameIdsShown } from '../state/frames-shown.ts';
import { useSession } from '../state/session.ts';
import { sharedPlanView } from '../ui/plan-view.ts';
import { exposureDifferences } from './exposure-words.ts';
import { Tile } from './Tile.tsx';
import { TileScene } from './TileScene.tsx';
import { UnlitTile } from './UnlitTile.tsx';
import { type TileDrag, useTileDrag } from './use-tile-drag.ts';

const dragMark = (drag: TileDrag | null, id: string, isAfter: boolean) => {
  if (drag?.schemeId === id) return 'moving';
  return drag?.overId === id ? (isAfter ? 'after' : 'before') : null;
};

/** The compared schemes side by side, in the order of the document, and the picture without lamps. */
export const Tiles = () => {
  const setup = useSetup();
  const present = useScheme();
  const frame = useFrame();
  const showsBlend = useApp((state) => state.showsBlend);
  const { comparedIds, showsUnlit } = useSession();
  const [sizes, onSize] = useScreenSizes();
  const schemes = useMemo(() => comparedSchemes(setup, comparedIds), [setup, comparedIds]);
  const base = schemes.find(({ id }) => id === present.id) ?? (schemes[0] as Scheme);
  const planView = useMemo(() => sharedPlanView(setup, schemes), [setup, schemes]);
  const { edit } = useApp.getState();
  const move = (schemeId: string, overId: string | undefined) => {
    if (overId)
      edit((s) =>
        moveScheme(
          s,
          schemeId,
          s.schemes.findIndex(({ id }) => id === overId),
        ),
      );
  };
  /** A tile that is moved in the page loses the focus, and so does a button that is of no use any more. */
  const step = (schemeId: string, overId: string, name: 'earlier' | 'later') => {
    move(schemeId, overId);
    requestAnimationFrame(() => {
      const steps = `[data-scheme="${schemeId}"] [data-step`;
      const again = document.querySelector<HTMLElement>(`${steps}="${name}"]:enabled`);
      (again ?? document.querySelector<HTMLElement>(`${steps}]:enabled`))?.focus();
    });
  };
  const { drag, handlersOf } = useTileDrag(move);
  const from = schemes.findIndex(({ id }) => id === drag?.schemeId);
  const differs = schemes.some(({ camera }) => camera) || exposureDifferences(base, schemes).length > 0;
  const { sensor } = base.camera ?? setup.camera;
  return (
    <div className="tiles" data-count={schemes.length + (showsUnlit ? 1 : 0)}>
      {schemes.map((scheme, i) => {
        const [before, after] = [schemes[i - 1], schemes[i + 1]];
        return (
          <Tile
            key={scheme.id}
            setup={setup}
            scheme={scheme}
            isPresent={scheme.id === present.id}
            planView={planView}
            shown={frameIdsShown(scheme, showsBlend ? null : frame)}
            onSize={onSize}
            onEarlier={before ? () => step(scheme.id, before.id, 'earlier') : null}
            onLater={after ? () => step(scheme.id, after.id, 'later') : null}
            dragMark={dragMark(drag, scheme.id, i > from)}
            dragHandlers={handlersOf(scheme.id)}
          />
        );
      })}
      {showsUnlit && (
        <UnlitTile aspect={sensor.widthMm / sensor.heightMm} of={differs ? base.name : null} onSize={onSize} />
      )}
      <TileScene schemes={schemes} base={base} sizes={sizes} />
    </div>
  );
};
