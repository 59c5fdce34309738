import { useEffect, useRef, useState } from 'react';
import { maxSamples } from '../picture/samples.ts';
import type { ScreenSizes } from '../picture/use-screen-sizes.ts';
import type { Size } from '../render/layer-store.ts';
import { theDarkroom } from '../render/the-darkroom.ts';
import { type SweepRun, useSweeps } from '../state/sweeps.ts';
import { cellPicture, shownFrame, tracedSize } from './cell-picture.ts';
import { developLarge, developSheet } from './develop-sheet.ts';
import { screenOf } from './sheet-of.ts';

/** Samples of a small picture. */
const tileSamples = Math.min(16, maxSamples);

/** Name of the screen that a picture is seen large on. */
export const largeScreen = 'sweep-large';

/**
 * Has the pictures of a sweep developed onto the tiles as long as the room is there. Coming back to the room, those
 * that were traced are shown again, and a sweep under way goes on.
 */
export const useSheet = (run: SweepRun, sizes: ScreenSizes): void => {
  const isCancelled = useSweeps((state) => state.isCancelled);
  const openId = useSweeps((state) => state.openId);
  const [isBusy, setIsBusy] = useState(false);
  const open = run.cells.find(({ id }) => id === openId);
  const openSize = sizes.get(largeScreen);
  const large = useRef<ReturnType<typeof cellPicture> | null>(null);
  /** Calls off a sweep under way, not what is only shown again. */
  const under = useRef<AbortController | null>(null);
  const [tiles, setTiles] = useState<{ readonly run: SweepRun; readonly size: Size } | null>(null);
  const first = run.cells[0];
  const tile = first && sizes.get(screenOf(first));
  const [width, height] = [tile?.width ?? 0, tile?.height ?? 0];

  useEffect(() => {
    const picture = open && openSize ? cellPicture(run, open, openSize, largeScreen) : null;
    large.current = picture;
    if (isBusy) return;
    if (!picture) return theDarkroom().rest();
    const stop = new AbortController();
    void developLarge(picture, { frame: shownFrame(run), size: tracedSize(run) }, maxSamples, stop.signal);
    return () => stop.abort();
  }, [run, open, openSize, isBusy]);

  // tiles that change their size under way keep what they show until the sweep is done
  useEffect(() => {
    if (width === 0) return;
    setTiles((before) => {
      const isSame = before?.size.width === width && before.size.height === height;
      return before?.run === run && (isSame || isBusy) ? before : { run, size: { width, height } };
    });
  }, [run, width, height, isBusy]);

  useEffect(() => {
    const { pictures, isCancelled, tellPictures } = useSweeps.getState();
    if (tiles?.run !== run) return;
    // what is there already is only shown again
    const isDone = pictures.stage === 'done';
    const isAgain = isCancelled || isDone;
    const cells = isAgain ? run.cells.slice(0, pictures.shown) : run.cells;
    const stop = new AbortController();
    under.current = isAgain ? null : stop;
    const order = {
      pictures: cells.map((cell) => cellPicture(run, cell, tiles.size)),
      frame: shownFrame(run),
      size: tracedSize(run),
      levels: isAgain || tileSamples === 1 ? [isDone ? tileSamples : 1] : [1, tileSamples],
    };
    setIsBusy(true);
    void developSheet(order, () => large.current, stop.signal, isAgain ? () => undefined : tellPictures).then(() => {
      if (!stop.signal.aborted) setIsBusy(false);
    });
    return () => {
      stop.abort();
      theDarkroom().rest();
    };
  }, [run, tiles]);

  useEffect(() => {
    if (!isCancelled || !under.current) return;
    under.current.abort();
    under.current = null;
    setIsBusy(false);
  }, [isCancelled]);
};
