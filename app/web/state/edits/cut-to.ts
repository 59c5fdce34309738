export { cutTo } from '../../../../core/setup/plain-text.ts';

/** Longest name of a scheme. */
export const longestName = 80;
