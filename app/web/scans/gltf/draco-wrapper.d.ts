declare module 'three/examples/jsm/libs/draco/gltf/draco_wasm_wrapper.js' {
  const start: (options: { readonly wasmBinary: ArrayBuffer }) => Promise<import('./draco-module.ts').DracoModule>;
  export default start;
}
