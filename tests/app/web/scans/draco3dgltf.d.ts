declare module 'draco3dgltf' {
  const draco3d: {
    readonly createDecoderModule: (options?: { readonly wasmBinary: Uint8Array }) => Promise<unknown>;
    readonly createEncoderModule: () => Promise<unknown>;
  };
  export default draco3d;
}
