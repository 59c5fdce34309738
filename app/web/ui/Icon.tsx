/** Drawn on 16 by 16, in strokes of 1.5: what a room is about, for whoever does not read its word. */
const paths = {
  picture: 'M2 3H14V13H2ZM2 11.5L6 7L9 10.5L11 8.5L14 11.5',
  compare: 'M2 4H7V12H2ZM9 4H14V12H9Z',
  sweep: 'M2.5 12A5.5 5.5 0 0 1 13.5 12M8 4V6.5M3.2 6L5 7.8M12.8 6L11 7.8M8 12V12.01',
  card: 'M4 2H12V14H4ZM6.5 5H9.5M6.5 8H9.5M6.5 11H9.5',
  plan: 'M8 2.5A5.5 5.5 0 1 1 7.99 2.5ZM8 6V10M6 8H10',
  lamps: 'M2 6.5H7L10 4.5V11.5L7 9.5H2ZM12 8H14.5M12 5.5L14 4M12 10.5L14 12',
  subjects: 'M5 13L6 4L9 2.5L11 5L11.5 13M2 13H14',
  exposure: 'M8 2A6 6 0 1 1 7.99 2ZM8 5L10.6 6.5V9.5L8 11L5.4 9.5V6.5Z',
  time: 'M8 2A6 6 0 1 1 7.99 2ZM8 5V8L10.5 9.5',
  notes: 'M8 2.5L14 13H2ZM8 6.5V9.5M8 11.2V11.21',
} as const;

export type IconName = keyof typeof paths;

/** A small drawing beside a word, never in its place. */
export const Icon = ({ name }: { name: IconName }) => (
  <svg className="icon" viewBox="0 0 16 16" width={16} height={16} aria-hidden="true">
    <path d={paths[name]} />
  </svg>
);
