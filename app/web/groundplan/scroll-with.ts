/** So near to an edge of what is seen a hand that drags has the page scroll, pixels: as much as a finger covers. */
const nearPixels = 56;
/** What is left free round the plan, pixels. */
const marginPixels = 8;

/** A stretch down the screen, in pixels from its top. */
interface Stretch {
  readonly top: number;
  readonly bottom: number;
}

/**
 * How far the page is to scroll down under a pointer that drags on a plan, in pixels, negative for up: the farther the
 * nearer the pointer is to an edge of what is seen, until the plan ends there.
 */
export const scrollFor = (pointerY: number, plan: Stretch, seen: Stretch): number => {
  const below = Math.min(pointerY - (seen.bottom - nearPixels), plan.bottom + marginPixels - seen.bottom);
  if (below > 0) return below;
  const above = Math.min(seen.top + nearPixels - pointerY, seen.top - (plan.top - marginPixels));
  return above > 0 ? -above : 0;
};

/** On a phone, scrolls the page with a drag: a plan that goes on below the bar of rooms can be dragged across whole. */
export const scrollWith = (plan: Element, { clientY }: { readonly clientY: number }): void => {
  const bar = document.querySelector('.switch')?.getBoundingClientRect();
  if (!bar?.height) return;
  const down = scrollFor(clientY, plan.getBoundingClientRect(), { top: 0, bottom: bar.top });
  if (down !== 0) window.scrollBy(0, down);
};
