import { readFileSync } from 'node:fs';
import draco3d from 'draco3dgltf';
import { decode } from 'fast-png';
import type { DracoModule } from '../../../../app/web/scans/gltf/draco-module.ts';
import type { Picture, ScanTools } from '../../../../app/web/scans/scan-tools.ts';

/** A PNG as RGBA bytes. The page decodes pictures with the browser's own decoder instead. */
const decodePicture = async (bytes: Uint8Array): Promise<Picture> => {
  const { width, height, channels, data, depth } = decode(bytes);
  if (depth !== 8) throw new Error('only 8 bits here');
  const rgba = new Uint8Array(width * height * 4).fill(255);
  for (let i = 0; i < width * height; i++)
    for (let k = 0; k < 4; k++) {
      const from = channels >= 3 ? k : k < 3 ? 0 : 1;
      if (from < channels) rgba[i * 4 + k] = data[i * channels + from] as number;
    }
  return { width, height, rgba };
};

const wasm = readFileSync('node_modules/three/examples/jsm/libs/draco/gltf/draco_decoder.wasm');

/** What reading a scan needs, in Node: three's Draco WebAssembly in the wrapper that three ships too. */
export const nodeTools: ScanTools = {
  decodePicture,
  startDraco: () => draco3d.createDecoderModule({ wasmBinary: wasm }) as Promise<DracoModule>,
};
