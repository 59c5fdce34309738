import { useSaving } from '../state/page-saving.ts';

/** Whether and where the setup on screen is kept. */
export const KeptLine = () => {
  const { key, sampleId, problem } = useSaving();
  const words = () => {
    if (problem !== null) return 'Your last changes are not kept. Save them as a file.';
    if (key === null && sampleId !== null) return 'It comes with the page. Your first change makes a copy of your own.';
    if (key === null) return 'New. It is kept from your first change on.';
    return `${sampleId === null ? 'Kept' : 'Your copy of a sample, kept'} in this browser.`;
  };
  return <p className="quiet kept-line">{words()}</p>;
};
