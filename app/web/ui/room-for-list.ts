/** Kept free between a list and the edge of what is seen, px. */
const margin = 12;

/** Puts the list of a drop under its button, or over it where there is more room, and no higher than there is. */
export const roomForList = (drop: HTMLElement): void => {
  const { top, bottom } = drop.getBoundingClientRect();
  const strip = Number.parseFloat(getComputedStyle(drop).getPropertyValue('--time')) || 0;
  const [above, below] = [top - margin, innerHeight - strip - bottom - margin];
  const wanted = drop.lastElementChild?.scrollHeight ?? 0;
  const isOver = below < wanted && above > below;
  drop.toggleAttribute('data-over', isOver);
  drop.style.setProperty('--room', `${Math.round(isOver ? above : below)}px`);
};
