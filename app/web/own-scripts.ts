interface TypePolicies {
  createPolicy(name: 'default', rules: { createScriptURL: (address: string) => string }): unknown;
}

/**
 * Where the browser asks (Trusted Types), workers may be started from the page’s own files only, and no string becomes script
 * or markup at all.
 */
const { trustedTypes } = globalThis as { trustedTypes?: TypePolicies };
trustedTypes?.createPolicy('default', {
  createScriptURL: (address) => {
    const { origin, href } = new URL(address, location.href);
    if (origin !== location.origin) throw new TypeError(`${href} is not a file of this page`);
    return address;
  },
});
