/**
 * Codes of cautions that tell of harm: to eyes, to whoever walks, to aircraft. Paper calls these alone a danger; a
 * picture that is spoilt, however badly, is not one. Our choice, after trade practice.
 */
export const harmCodes: ReadonlySet<string> = new Set(['eye', 'terrain', 'cannot-walk', 'beam-at-sky']);
