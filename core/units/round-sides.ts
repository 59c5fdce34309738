/** From how many sides on something round is meant to look round; fewer are a post with flat faces. No published source. */
export const fewestRoundSides = 8;
