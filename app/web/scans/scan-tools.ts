import type { DracoModule } from './gltf/draco-module.ts';

/** A picture as sRGB bytes with opacity, four a pixel, rows from the top. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array | Uint8ClampedArray;
}

/** What reading needs of where it runs: a worker of the page, or Node in tests. */
export interface ScanTools {
  /** Decodes a PNG, JPEG, WebP or AVIF; no side longer than `longestSide`. Fails when it can't. */
  readonly decodePicture: (bytes: Uint8Array, mediaType: string, longestSide: number) => Promise<Picture>;
  /** Starts Draco's decoder. */
  readonly startDraco: () => Promise<DracoModule>;
  /** Told what is being done, in a few words. */
  readonly onProgress?: (words: string) => void;
}
