import type { Mask } from '../../../core/trace/mask.ts';
import type { WorldFrame } from '../../../core/world/world.ts';
import { picturesOf, type Scene, type Shown, type ShownFrame } from './scene.ts';
import type { SkyOrder } from './sky-slots.ts';
import type { WantedLayer } from './wanted-layers.ts';

/**
 * What the layer of a light is called. It goes by place and id among the frame's lights: ids alone do not do, a pass may be
 * called "sky".
 */
export const lightKey = (shown: Shown, frame: WorldFrame, light: number, bounces: number): string =>
  `${shown.name}/${frame.id}/${light}/${frame.lights[light]?.id}/${bounces}`;

/** What the layer of a mask is called. It lies over the picture of its frame: through the open lens each frame has its own. */
export const maskKey = (shown: Shown, { frame, mask }: ShownFrame): string =>
  `${shown.name}/${frame.id}/mask/${mask?.part}`;

/** Which sky is a frame’s: it has one at most, wherever it stands among its lights. */
export const skySlot = (shown: Shown, frame: WorldFrame): string => `${shown.name}/${frame.id}`;

const openSky: Mask = { kind: 'mask', part: 'sky' };

/** The layers that a scene is made of, by key; direct light first. */
export const layersOfScene = (scene: Scene): Map<string, WantedLayer> => {
  const direct = new Map<string, WantedLayer>();
  const bounced = new Map<string, WantedLayer>();
  for (const shown of scene.tiles.flatMap(picturesOf))
    for (const each of shown.frames) {
      const { frame, mask } = each;
      if (mask)
        direct.set(maskKey(shown, each), { label: `mask ${mask.part}`, view: frame.view, source: mask, bounces: 0 });
      frame.lights.forEach(({ id, source }, i) => {
        if (source.kind === 'seen-sky') {
          // the sky itself is drawn apart; traced is where it is open
          direct.set(lightKey(shown, frame, i, 0), {
            label: 'open sky',
            view: frame.view,
            source: openSky,
            bounces: 0,
          });
          return;
        }
        const { bounces } = shown.world;
        const label = source.kind === 'lamp' ? `${shown.name}/${id}` : id;
        const layer = { label, view: frame.view, source, bounces: 0 } as const;
        direct.set(lightKey(shown, frame, i, 0), layer);
        if (bounces > 0)
          bounced.set(lightKey(shown, frame, i, bounces), { ...layer, label: `${label} bounced`, bounces });
      });
    }
  return new Map([...direct, ...bounced]);
};

/** The skies that a scene shows. */
export const skiesOfScene = (scene: Scene): SkyOrder[] =>
  scene.tiles
    .flatMap(picturesOf)
    .flatMap((shown) =>
      shown.frames.flatMap(({ frame }) =>
        frame.lights.flatMap(({ source }) =>
          source.kind === 'seen-sky'
            ? [{ slot: skySlot(shown, frame), view: frame.view, sky: source.sky, size: scene.size }]
            : [],
        ),
      ),
    );
