import { graphicsCard } from '../render/capability.ts';
import { theDarkroom } from '../render/darkroom.ts';
import { useLight } from './use-scene.ts';

const slowWords = 'The processor does instead: small first, then finer, and slower.';

/** Says who draws the pictures where it is not the graphics card; nothing where it is. */
export const LightNote = ({ className = 'quiet' }: { className?: string }) => {
  const light = useLight();
  if (light === 'card') return null;
  if (light === 'none')
    return (
      <p className={className} role="status">
        The picture can’t be drawn just now. All else works.{' '}
        <button type="button" className="small" onClick={() => theDarkroom().tryAgain()}>
          Try again
        </button>
      </p>
    );
  const why = graphicsCard().hasFloats
    ? 'The graphics card did not come back to draw the picture.'
    : 'This machine’s graphics can’t draw the picture.';
  return (
    <p className={className} role="status">
      {light === 'lost'
        ? 'The graphics card was lost for a moment. This is the last picture; it goes on by itself.'
        : `${why} ${slowWords}`}
    </p>
  );
};
