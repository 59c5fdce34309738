/**
 * What the page may load, and from where: its own files and nothing else. A list of directives as Content Security Policy
 * Level 3 and Trusted Types write them; all that is not listed is refused.
 */
const directives: readonly string[] = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "font-src 'self'",
  // pictures on the page are canvases; those made to be saved or printed are blobs of its own
  "img-src 'self' blob: data:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  // no text becomes script or markup; addresses of workers are looked at (app/web/own-scripts.ts)
  "require-trusted-types-for 'script'",
  'trusted-types default',
];

/** For the page itself, in its head. */
export const pagePolicy = directives.join('; ');

/**
 * For whoever serves the files, as a header of each: workers go by the header of their own file, where those that read scans
 * need WebAssembly, and only a header can keep the page out of the frames of others.
 */
export const servedPolicy = directives
  .filter((directive) => !/trusted-types/.test(directive))
  .map((directive) => directive.replace("script-src 'self'", "script-src 'self' 'wasm-unsafe-eval'"))
  .concat("frame-ancestors 'none'")
  .join('; ');
