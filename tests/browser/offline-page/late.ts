declare const buildName: string;

/** Comes in a file of its own, when it is asked for. */
export const lateWord = `late part of ${buildName}`;
