/** Brings the open subject into view and puts the focus on its strip, once it is drawn. */
export const showOpenSlip = (): void => {
  requestAnimationFrame(() => {
    const head = document.querySelector<HTMLElement>('.subjects .slip-open .slip-head');
    head?.focus({ preventScroll: true });
    document.querySelector('.subjects .slip-open')?.scrollIntoView({ block: 'nearest' });
  });
};
