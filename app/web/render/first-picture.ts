/** Marks of the browser’s clock: a picture is on a screen of the page, if only coarsely, and one of full size is. */
export const pictureMarks = ['first picture', 'first full picture'] as const;

const marked = new Set<string>();
let tell: () => void = () => undefined;
const isThere = new Promise<void>((resolve) => {
  tell = resolve;
});

/** Told whenever a picture was put on a screen; `samples` = the fewest in any of its layers, 0 for a coarse one. */
export const pictureStands = (samples: number): void => {
  for (const [least, name] of pictureMarks.entries()) {
    if (samples < least || marked.has(name)) continue;
    marked.add(name);
    performance.mark(name);
  }
  tell();
};

/** Waits for the page’s first picture, but no longer than so many milliseconds: there may be none. */
export const firstPicture = (mostMilliseconds: number): Promise<void> =>
  Promise.race([isThere, new Promise<void>((resolve) => setTimeout(resolve, mostMilliseconds))]);
