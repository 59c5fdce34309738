import { describe, expect, it } from 'vitest';
import { appManifest, iconFiles } from '../../../app/build/app-manifest.ts';
import { pagePolicy, servedPolicy } from '../../../app/build/page-policy.ts';

/** Directives by name, as a browser takes them: the first of a name counts (CSP Level 3, 2.2.1). */
const directivesOf = (policy: string): Map<string, string[]> => {
  const found = new Map<string, string[]>();
  for (const directive of policy.split(';')) {
    const [name = '', ...values] = directive.trim().split(/\s+/);
    if (!found.has(name)) found.set(name, values);
  }
  return found;
};

/** Kinds of things that default-src does not speak for, each of which must be named (CSP Level 3, 6.1 to 6.3). */
const withoutDefault = ['base-uri', 'form-action'] as const;

describe('the policy of the page', () => {
  const page = directivesOf(pagePolicy);

  it('lets nothing pass that it does not name', () => {
    expect(page.get('default-src')).toEqual(["'none'"]);
    for (const name of withoutDefault) expect(page.get(name), name).toEqual(["'none'"]);
  });

  it('names its own files alone: no host, no scheme of the network, no wildcard', () => {
    const values = [...page].filter(([name]) => name.endsWith('-src')).flatMap(([, list]) => list);
    expect(new Set(values)).toEqual(new Set(["'none'", "'self'", 'blob:', 'data:']));
    for (const name of ['script-src', 'style-src', 'connect-src', 'worker-src', 'font-src', 'manifest-src'])
      expect(page.get(name), name).toEqual(["'self'"]);
  });

  it('lets no text become script, style or markup', () => {
    expect(pagePolicy).not.toMatch(/unsafe-inline|unsafe-eval|unsafe-hashes|strict-dynamic|sha256-|nonce-/);
    expect(page.get('require-trusted-types-for')).toEqual(["'script'"]);
    expect(page.get('trusted-types')).toEqual(['default']);
  });

  it('is served with the same limits, WebAssembly for workers, and no place in the frames of others', () => {
    const served = directivesOf(servedPolicy);
    expect(served.get('frame-ancestors')).toEqual(["'none'"]);
    expect(served.get('script-src')).toEqual(["'self'", "'wasm-unsafe-eval'"]);
    for (const [name, values] of page)
      if (name !== 'script-src' && !name.includes('trusted-types')) expect(served.get(name), name).toEqual(values);
  });
});

describe('the manifest', () => {
  it('has what a device asks for before it installs a page: name, start, display, icons of 192 and 512 pixels', () => {
    expect(appManifest).toMatchObject({ name: 'Lampfall', start_url: './', scope: './', display: 'standalone' });
    const sizes = appManifest.icons.map(({ sizes, purpose }) => `${sizes} ${purpose}`);
    expect(sizes).toEqual(expect.arrayContaining(['192x192 any', '512x512 any', '512x512 maskable']));
    for (const { src } of appManifest.icons) expect(iconFiles.map((name) => `./icons/${name}`)).toContain(src);
  });
});
