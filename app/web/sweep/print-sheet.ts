/** Prints the page with nothing on it but the sheet: sweep.css leaves out the rest as long as the mark is there. */
export const printSheet = (): void => {
  const { dataset } = document.documentElement;
  dataset['print'] = 'sweep';
  window.addEventListener(
    'afterprint',
    () => {
      delete dataset['print'];
    },
    { once: true },
  );
  window.print();
};
