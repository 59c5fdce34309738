import type { DracoModule } from './gltf/draco-module.ts';
import type { Picture, ScanTools } from './scan-tools.ts';

/** A picture decoded by the browser, made smaller where it is larger than needed. */
const decodePicture = async (bytes: Uint8Array, type: string, longestSide: number): Promise<Picture> => {
  const bitmap = await createImageBitmap(new Blob([bytes as Uint8Array<ArrayBuffer>], { type }), {
    colorSpaceConversion: 'none',
    premultiplyAlpha: 'none',
  });
  try {
    const share = Math.min(1, longestSide / Math.max(bitmap.width, bitmap.height));
    const [width, height] = [bitmap.width, bitmap.height].map((side) => Math.max(Math.round(side * share), 1)) as [
      number,
      number,
    ];
    const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
    if (!context) throw new Error('no canvas');
    context.imageSmoothingQuality = 'high';
    context.drawImage(bitmap, 0, 0, width, height);
    return { width, height, rgba: context.getImageData(0, 0, width, height).data };
  } finally {
    bitmap.close();
  }
};

/** Draco’s decoder from three, its WebAssembly within the bundle: nothing is fetched. */
const startDraco = async (): Promise<DracoModule> => {
  const [{ default: start }, { default: wasm }] = await Promise.all([
    import('three/examples/jsm/libs/draco/gltf/draco_wasm_wrapper.js'),
    import('three/examples/jsm/libs/draco/gltf/draco_decoder.wasm?url&inline'),
  ]);
  const letters = atob(wasm.slice(wasm.indexOf(',') + 1));
  const wasmBinary = new Uint8Array(letters.length);
  for (let i = 0; i < letters.length; i++) wasmBinary[i] = letters.charCodeAt(i);
  return start({ wasmBinary: wasmBinary.buffer });
};

/** What reading needs, in a worker of the page. */
export const workerTools = (onProgress: (words: string) => void): ScanTools => ({
  decodePicture,
  startDraco,
  onProgress,
});
