import { theDarkroom } from '../render/the-darkroom.ts';
import { useLight } from './use-scene.ts';

/** Says who draws the pictures where it is not the graphics card; nothing where it is. */
export const LightNote = () => {
  const light = useLight();
  if (light === 'card') return null;
  if (light === 'none')
    return (
      <p className="quiet light-note" role="status">
        The picture can’t be drawn just now. All else works.{' '}
        <button type="button" className="small" onClick={() => theDarkroom().tryAgain()}>
          Try again
        </button>
      </p>
    );
  const why = theDarkroom().hasHadCard
    ? 'The graphics card did not come back to draw the picture'
    : 'This machine’s graphics can’t draw the picture';
  return (
    <p className="quiet light-note" role="status">
      {light === 'lost'
        ? 'The graphics card was lost for a moment. This is the last picture; it goes on by itself.'
        : `${why}: the processor does, slowly, small first, then finer.`}
    </p>
  );
};
