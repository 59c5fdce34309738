import '../../../app/web/own-scripts.ts';
import type { Placing } from '../../../app/web/scans/place-scan.ts';
import { readScanFile } from '../../../app/web/state/scan-reader.ts';
import { decodeScan } from '../../../core/scan/scan-code.ts';

/** What came of a file, and how long it took. */
export interface PageScan {
  readonly why: string | null;
  readonly triangles: number;
  readonly sizeMetres: readonly number[];
  readonly meanColour: readonly number[] | null;
  readonly leftOut: readonly string[];
  readonly progress: readonly string[];
  /** First triangles' colours, sRGB bytes. */
  readonly colours: readonly number[];
  readonly letters: number;
  readonly readMs: number;
  readonly packMs: number;
  /** Longest time for which the page did nothing else meanwhile. */
  readonly longestGapMs: number;
}

const chosen = (): File => {
  const file = document.querySelector('input')?.files?.[0];
  if (!file) throw new Error('no file is chosen');
  return file;
};

/** Looks how long the page is held up, until it is told to stop. */
const watchGaps = () => {
  let [last, longest] = [performance.now(), 0];
  const timer = setInterval(() => {
    const now = performance.now();
    [longest, last] = [Math.max(longest, now - last), now];
  }, 5);
  return () => {
    clearInterval(timer);
    return longest;
  };
};

const nothing = { triangles: 0, sizeMetres: [], meanColour: null, leftOut: [], colours: [], letters: 0 };

/** Reads the chosen file and packs it for the document, as the page does. */
const read = async (placing: Placing): Promise<PageScan> => {
  const progress: string[] = [];
  const stop = watchGaps();
  const start = performance.now();
  const reader = readScanFile(chosen(), (words) => progress.push(words));
  try {
    const summary = await reader.summary;
    const readMs = performance.now() - start;
    const scan = await reader.pack(placing);
    const packMs = performance.now() - start - readMs;
    const longestGapMs = stop();
    const { triangleCount: triangles, sizeMetres } = scan;
    const colours = [...(decodeScan(scan).colours ?? []).slice(0, 30)];
    const { meanColour, leftOut } = summary;
    return {
      why: null,
      triangles,
      sizeMetres,
      meanColour,
      leftOut,
      progress,
      colours,
      letters: scan.data.length,
      readMs,
      packMs,
      longestGapMs,
    };
  } catch (error) {
    const why = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    return { ...nothing, why, progress, readMs: performance.now() - start, packMs: 0, longestGapMs: stop() };
  } finally {
    reader.close();
  }
};

/** Starts to read the chosen file and closes it at once when the first progress is heard. */
const readAndClose = (): Promise<string> =>
  new Promise((resolve) => {
    const reader = readScanFile(chosen(), () => reader.close());
    reader.summary.then(
      () => resolve('it was read'),
      (error) => resolve(String(error.message)),
    );
  });

/** A JPEG of one colour, made by the browser: base64. */
const jpeg = async (colour: string): Promise<string> => {
  const canvas = new OffscreenCanvas(32, 32);
  const context = canvas.getContext('2d');
  if (!context) throw new Error('no canvas');
  context.fillStyle = colour;
  context.fillRect(0, 0, 32, 32);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 });
  return btoa(String.fromCharCode(...new Uint8Array(await blob.arrayBuffer())));
};

const scanPage = { read, readAndClose, jpeg };
export type ScanPage = typeof scanPage;
Object.assign(window, { scanPage });
