/** Most lamps, and most measured beams, of a bag. */
export const maxBagLamps = 200;
